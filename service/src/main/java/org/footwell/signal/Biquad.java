package org.footwell.signal;

import io.swagger.v3.oas.annotations.media.Schema;
import org.footwell.calculation.AllDigits;

/**
 * A digital section of the second order, H(z) = (b0 + b1·z⁻¹ + b2·z⁻²)/(1 + a1·z⁻¹ + a2·z⁻²); of
 * the first when b2 and a2 are 0.
 */
@AllDigits
public record Biquad(
    @Schema(
            description =
                "b0 of H = (b0 + b1·z⁻¹ + b2·z⁻²)/(1 + a1·z⁻¹ + a2·z⁻²), a0 being 1: the output is"
                    + " y[n] = b0·x[n] + b1·x[n−1] + b2·x[n−2] − a1·y[n−1] − a2·y[n−2]")
        double b0,
    @Schema(description = "b1, as b0") double b1,
    @Schema(description = "b2, as b0; 0 in a section of the first order") double b2,
    @Schema(
            description =
                "a1, as b0: it is subtracted, so that low corners have an a1 near −2. Devices that"
                    + " add their feedback want −a1 instead")
        double a1,
    @Schema(
            description =
                "a2, as b0; 0 in a section of the first order. Devices that add their feedback want"
                    + " −a2 instead")
        double a2) {

  /** Lets everything through. */
  public static final Biquad WIRE = new Biquad(1, 0, 0, 0, 0);

  /** Largest distance of a pole from the origin. */
  public double poleRadius() {
    double half = a1 / 2;
    double square = half * half - a2;
    return square < 0 ? Math.sqrt(a2) : Math.abs(half) + Math.sqrt(square);
  }

  /** Whether every pole lies within the unit circle: the triangle |a2| < 1, |a1| < 1 + a2. */
  public boolean stable() {
    // 1 − |a1| first: exact where it matters, with |a1| near 2.
    return Math.abs(a2) < 1 && 1 - Math.abs(a1) + a2 > 0;
  }

  /** Whether nothing comes through it. */
  public boolean silent() {
    return b0 == 0 && b1 == 0 && b2 == 0;
  }

  /** Squared magnitude at a frequency; for fits, which need nothing else. */
  public double power(CirclePoint p) {
    return numerator().power(p) / denominator().power(p);
  }

  /** Gain, group delay and slope at a frequency. */
  public Response at(CirclePoint p) {
    return Cascade.of(this).at(p);
  }

  Quadratic numerator() {
    return new Quadratic(b0, b1, b2);
  }

  Quadratic denominator() {
    return new Quadratic(1, a1, a2);
  }
}
