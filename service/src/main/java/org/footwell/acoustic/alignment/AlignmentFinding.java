package org.footwell.acoustic.alignment;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about an alignment. */
public enum AlignmentFinding implements FindingCode {
  DELAY_EXCEEDS_MAXIMUM(STOP),
  ABSOLUTE_SETTING_EXCEEDS_MAXIMUM(WARNING),
  FILTERS_NOT_GIVEN(WARNING),
  INVERSION_ADVISED(WARNING),
  DELAY_AT_WINDOW_EDGE(WARNING),
  CROSSOVER_OUT_OF_PHASE(WARNING),
  ARRIVAL_HOLDS_FILTERS(WARNING),
  MEASURED_POLARITY_DIFFERS(WARNING),
  POLARITY_WOULD_MEND(NOTE),
  CROSSOVER_NOT_STATED(NOTE),
  SEATS_DISAGREE(NOTE),
  TEMPERATURE_DRIFT(NOTE),
  TRIM_DISTANCE_LAW(NOTE),
  NO_TRIMS_FROM_ARRIVALS(NOTE);

  private final Verdict level;

  AlignmentFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
