package org.footwell.fitting.comparison;

import org.footwell.fitting.comparison.sides.ComparedAmplifier;
import org.footwell.fitting.comparison.sides.ComparedPosition;
import org.footwell.fitting.comparison.sides.ComparedPosition.Band;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;
import org.footwell.fitting.comparison.sides.ComparedPosition.Zone;
import org.footwell.fitting.comparison.sides.ComparedPositionBuilder;

/** A position to be changed: the two front doors of the method page. */
final class PositionDraft {
  String name = "front doors";
  Zone zone = Zone.FRONT;
  Band band = Band.WOOFER;
  MountedAt at = MountedAt.DOOR;
  Integer driverCount = 2;
  DriverDraft factory = DriverDraft.factory();
  DriverDraft replacement = new DriverDraft();
  ComparedAmplifier amplifierBefore = volts(8.9);
  ComparedAmplifier amplifierAfter = watts(75, 4.0);
  Double displacementHz;
  Double reachLevelDbSpl;

  static PositionDraft named(String name) {
    PositionDraft draft = new PositionDraft();
    draft.name = name;
    return draft;
  }

  static ComparedAmplifier volts(double volts) {
    return new ComparedAmplifier(volts, null, null, null);
  }

  static ComparedAmplifier watts(double watts, Double loadOhm) {
    return new ComparedAmplifier(null, watts, loadOhm, null);
  }

  ComparedPosition position() {
    return ComparedPositionBuilder.builder()
        .name(name)
        .zone(zone)
        .band(band)
        .at(at)
        .driverCount(driverCount)
        .factory(factory == null ? null : factory.driver())
        .replacement(replacement.driver())
        .amplifierBefore(amplifierBefore)
        .amplifierAfter(amplifierAfter)
        .displacementHz(displacementHz)
        .reachLevelDbSpl(reachLevelDbSpl)
        .build();
  }
}
