package org.footwell.vehicle.reading;

import org.footwell.electrical.amplifier.OutputStage;
import org.footwell.electrical.amplifier.RatedAmplifier;
import org.footwell.electrical.amplifier.SineSource;
import org.footwell.parts.plan.PlannedAmplifier;

/** The outputs of a planned amplifier as sources of clean power. */
public final class PlannedSource {

  private PlannedSource() {}

  /** One of alike outputs, or two of them bridged. */
  public static SineSource of(
      PlannedAmplifier.Outputs outputs, boolean bridged, boolean regulated) {
    return outputs.rails() != null
        ? OutputStage.of(outputs.rails(), bridged, regulated)
        : RatedAmplifier.of(outputs.ratings(), bridged, regulated);
  }

  /** Supply voltage the powers of an amplifier are stated for, V. */
  public static double ratedV(PlannedAmplifier amplifier) {
    PlannedAmplifier.Outputs first = amplifier.outputs().get(0);
    return first.rails() == null ? first.ratings().supplyV() : first.rails().supplyV();
  }
}
