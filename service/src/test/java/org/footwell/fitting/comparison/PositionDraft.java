package org.footwell.fitting.comparison;

import org.footwell.fitting.comparison.sides.ComparedAmplifier;
import org.footwell.fitting.comparison.sides.ComparedAmplifierBuilder;
import org.footwell.fitting.comparison.sides.ComparedPosition;
import org.footwell.fitting.comparison.sides.ComparedPosition.Band;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;
import org.footwell.fitting.comparison.sides.ComparedPosition.Zone;
import org.footwell.fitting.comparison.sides.ComparedPositionBuilder;
import org.footwell.parts.DriverBuilder;

/** A position to be changed with its parts: the two front doors of the method page. */
final class PositionDraft {

  static final ComparedAmplifier AMPLIFIER_BEFORE = volts(8.9).build();
  static final ComparedAmplifier AMPLIFIER_AFTER = watts(75).loadOhm(4.0).build();

  DriverBuilder factory = ComparedParts.factory();
  DriverBuilder replacement = ComparedParts.replacement();
  final ComparedPositionBuilder place =
      ComparedPositionBuilder.builder()
          .name("front doors")
          .zone(Zone.FRONT)
          .band(Band.WOOFER)
          .at(MountedAt.DOOR)
          .driverCount(2)
          .amplifierBefore(AMPLIFIER_BEFORE)
          .amplifierAfter(AMPLIFIER_AFTER);

  static PositionDraft named(String name) {
    PositionDraft draft = new PositionDraft();
    draft.place.name(name);
    return draft;
  }

  static ComparedAmplifierBuilder volts(double volts) {
    return ComparedAmplifierBuilder.builder().voltageV(volts);
  }

  static ComparedAmplifierBuilder watts(double watts) {
    return ComparedAmplifierBuilder.builder().powerW(watts);
  }

  ComparedPosition position() {
    return place
        .factory(factory == null ? null : factory.build())
        .replacement(replacement.build())
        .build();
  }
}
