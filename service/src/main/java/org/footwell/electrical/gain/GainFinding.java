package org.footwell.electrical.gain;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a chain. */
public enum GainFinding implements FindingCode {
  STAGE_CLIPS_EARLY(WARNING),
  AMPLIFIER_CANNOT_REACH(WARNING),
  STAGE_CANNOT_REACH(NOTE),
  STAGE_COSTS_NOISE(NOTE),
  NOISE_AUDIBLE(WARNING),
  NOISE_INCOMPLETE(NOTE),
  TONE_CLIPS(STOP),
  TONE_INTO_DRIVER(NOTE),
  OVERLAP_LARGE(NOTE),
  STATED_POWER_NOT_CLEAN(NOTE),
  BRIDGE_ASSUMED(NOTE),
  MEASURING_UNKNOWN(WARNING),
  MEASURED_AGAINST_GROUND(STOP),
  HIGH_LEVEL_INPUT_UNKNOWN(WARNING),
  LINE_INPUT_ON_BRIDGE(STOP),
  LOAD_DETECTION_UNKNOWN(NOTE),
  LOAD_RESISTOR_MISSING(WARNING),
  LOAD_RESISTOR_TOO_WEAK(WARNING),
  TURN_ON_UNKNOWN(NOTE),
  TURN_ON_BY_SIGNAL(NOTE),
  TURN_ON_WITHOUT_OFFSET(WARNING);

  private final Verdict level;

  GainFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
