package org.footwell.acoustic.seats;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about levels at the seats. */
public enum SeatLevelFinding implements FindingCode {
  HEADROOM_SHORT(WARNING),
  SOURCES_CANCEL(WARNING),
  SOURCE_HOLDS_BACK(WARNING),
  LARGEST_LEVEL_LOUD(WARNING),
  MOVEMENT_NOT_JUDGED(NOTE),
  HEAT_NOT_JUDGED(NOTE),
  PHASES_NOT_PREDICTED(NOTE),
  CABIN_NOT_MEASURED(NOTE);

  private final Verdict level;

  SeatLevelFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
