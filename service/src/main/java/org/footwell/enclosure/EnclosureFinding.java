package org.footwell.enclosure;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import java.util.EnumSet;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a driver in a box. */
public enum EnclosureFinding implements FindingCode {
  DISPLACEMENT_BEYOND_XMAX(WARNING),
  DISPLACEMENT_IN_BAFFLE(WARNING),
  UNLOADED_BELOW_TUNING(WARNING),
  SUBSONIC_FILTER_NOT_ENOUGH(WARNING),
  XMAX_NOT_GIVEN(NOTE),
  POWER_BEYOND_RATING(WARNING),
  CONTINUOUS_POWER_NOT_GIVEN(NOTE),
  QTC_LOW(NOTE),
  QTC_HIGH(NOTE),
  QTS_UNUSUAL_FOR_VENTED(NOTE),
  RESPONSE_PEAK_HIGH(NOTE),
  PEAK_ABOVE_BASS(NOTE),
  FILL_OPTIMISTIC(NOTE),
  BOX_LARGER_THAN_SPACE(WARNING),
  BOX_LIKE_A_TUBE(WARNING),
  LEAKY_BAFFLE_MODEL(NOTE),
  LUMPED_MODEL_LIMIT(NOTE),
  FIGURES_BEYOND_MODEL(WARNING),
  CABIN_RISE_MODEL(NOTE),
  CABIN_TABLE_SHORT(NOTE),
  PORT_CHOKES(STOP),
  PORT_AIR_TOO_FAST(WARNING),
  PORT_RESONANCE_IN_RANGE(NOTE),
  PORT_LONGER_THAN_BOX(WARNING),
  PORT_TAKES_MUCH_ROOM(NOTE),
  PORT_VERY_SHORT(NOTE),
  SLOT_END_CORRECTION(NOTE);

  private final Verdict level;

  EnclosureFinding(Verdict level) {
    this.level = level;
  }

  /** What a vented box can bring up: all but what is of closed ones alone. */
  static FindingCode[] vented() {
    return EnumSet.complementOf(
            EnumSet.of(
                QTC_LOW, QTC_HIGH, FILL_OPTIMISTIC, LEAKY_BAFFLE_MODEL, DISPLACEMENT_IN_BAFFLE))
        .toArray(FindingCode[]::new);
  }

  @Override
  public Verdict level() {
    return level;
  }
}
