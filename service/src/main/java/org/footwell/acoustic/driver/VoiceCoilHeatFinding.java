package org.footwell.acoustic.driver;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about the heat of a voice coil. */
public enum VoiceCoilHeatFinding implements FindingCode {
  COIL_ABOVE_LIMIT(STOP),
  COIL_REACHES_LIMIT_LATER(WARNING),
  COIL_BURNS(STOP),
  COIL_ABOVE_USUAL_ADHESIVES(WARNING),
  COIL_COLDER_THAN_AIR(WARNING),
  COIL_COMPRESSES(NOTE),
  COIL_STILL_WARMING(NOTE);

  private final Verdict level;

  VoiceCoilHeatFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
