package org.footwell.acoustic.alignment;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;

/** Two sines of one frequency and level, apart by an angle. */
final class EqualSines {

  private static final Source TWO_SINES = Source.of("Sum of two equal sines, |1 + e^(jφ)|/2");

  /** Difference of two phases in degrees, above −180 to 180. */
  static final Formula.Of2 PHASE_ERROR =
      Formula.of("phase_error_deg", "φ_lower − φ_upper, turned to ±180", "degrees", TWO_SINES)
          .with("φ_lower", "φ_upper", (lower, upper) -> wrapped(lower - upper));

  /** Sum of two equal sines φ degrees apart against both in phase, dB. */
  static final Formula.Of1 SUM_LOSS =
      Formula.of("sum_loss_db", "20·lg|cos(φ/2)|, no less than −100", "dB", TWO_SINES)
          .with("φ", EqualSines::loss);

  private EqualSines() {}

  /** The same sum with one of them inverted, dB. */
  static double invertedDb(double degrees) {
    return SUM_LOSS.at(wrapped(degrees + 180));
  }

  private static double wrapped(double degrees) {
    double turned = Math.IEEEremainder(degrees, 360);
    return turned == -180 ? 180 : turned;
  }

  private static double loss(double degrees) {
    double cosine = Math.abs(Math.cos(Math.toRadians(degrees) / 2));
    return Math.max(BothSides.DEEPEST_DB, Decibels.ofAmplitude(cosine));
  }
}
