package org.footwell.acoustic.enclosure;

import static org.footwell.acoustic.enclosure.lowend.BoxFinding.DISPLACEMENT_IN_BAFFLE;
import static org.footwell.acoustic.enclosure.lowend.BoxFinding.UNLOADED_BELOW_TUNING;
import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;
import org.footwell.acoustic.enclosure.lowend.BoxFinding;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a box as such, besides what is said of a driver in any box. */
public enum EnclosureFinding implements FindingCode {
  QTC_LOW(NOTE),
  QTC_HIGH(NOTE),
  QTS_UNUSUAL_FOR_VENTED(NOTE),
  FILL_OPTIMISTIC(NOTE),
  LEAKY_BAFFLE_MODEL(NOTE),
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

  /** What a closed box or a baffle can bring up. */
  static FindingCode[] closed() {
    return together(EnumSet.complementOf(EnumSet.of(UNLOADED_BELOW_TUNING)), ofClosed());
  }

  /** What a vented box can bring up. */
  static FindingCode[] vented() {
    return together(
        EnumSet.complementOf(EnumSet.of(DISPLACEMENT_IN_BAFFLE)), EnumSet.complementOf(ofClosed()));
  }

  private static EnumSet<EnclosureFinding> ofClosed() {
    return EnumSet.of(QTC_LOW, QTC_HIGH, FILL_OPTIMISTIC, LEAKY_BAFFLE_MODEL);
  }

  private static FindingCode[] together(Set<BoxFinding> ofAny, Set<EnclosureFinding> own) {
    return Stream.<FindingCode>concat(ofAny.stream(), own.stream()).toArray(FindingCode[]::new);
  }

  @Override
  public Verdict level() {
    return level;
  }
}
