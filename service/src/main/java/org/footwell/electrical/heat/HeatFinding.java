package org.footwell.electrical.heat;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about current and heat. */
public enum HeatFinding implements FindingCode {
  REACTIVE_WORST_CASE(NOTE),
  NOISE_CLIPPED(NOTE),
  QUIESCENT_HIGH(WARNING),
  CONVERTER_OPTIMISTIC(WARNING),
  CLASS_D_OPTIMISTIC(WARNING),
  CURRENT_BEYOND_FUSES(WARNING),
  SUPPLY_SINKS(WARNING),
  RAILS_SINK(WARNING);

  private final Verdict level;

  HeatFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
