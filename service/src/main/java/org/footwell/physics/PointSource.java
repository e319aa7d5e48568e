package org.footwell.physics;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** A source that is small against its distance, in free field. */
public final class PointSource {

  public static final Source INVERSE_SQUARE =
      Source.of("Inverse-square law of a point source in free field");

  /** Level at a distance in m, above 0, less that at 1 m, dB. */
  public static final Formula.Of1 DISTANCE =
      Formula.of("distance_db", "−20·lg(r/1 m)", "dB", INVERSE_SQUARE)
          .with("r", r -> Decibels.ofAmplitude(1 / r));

  private PointSource() {}
}
