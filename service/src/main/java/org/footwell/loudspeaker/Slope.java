package org.footwell.loudspeaker;

import org.footwell.physics.Phasor;

/**
 * A complex function of angular frequency at one place: its value and its derivative there. Carried
 * through the whole calculation, the derivative makes a group delay exact, without differences.
 *
 * @param re real part
 * @param im imaginary part
 * @param dRe derivative of the real part by ω, in seconds
 * @param dIm derivative of the imaginary part by ω
 */
record Slope(double re, double im, double dRe, double dIm) {

  static final Slope ZERO = real(0);

  static final Slope ONE = real(1);

  /** A constant. */
  private static Slope real(double value) {
    return new Slope(value, 0, 0, 0);
  }

  /** j·ω·factor. */
  static Slope rising(double w, double factor) {
    return new Slope(0, w * factor, 0, factor);
  }

  Slope plus(Slope other) {
    return new Slope(re + other.re, im + other.im, dRe + other.dRe, dIm + other.dIm);
  }

  Slope plus(double constant) {
    return new Slope(re + constant, im, dRe, dIm);
  }

  Slope times(double factor) {
    return new Slope(re * factor, im * factor, dRe * factor, dIm * factor);
  }

  /** Product rule. */
  Slope times(Slope o) {
    return new Slope(
        re * o.re - im * o.im,
        re * o.im + im * o.re,
        dRe * o.re - dIm * o.im + re * o.dRe - im * o.dIm,
        dRe * o.im + dIm * o.re + re * o.dIm + im * o.dRe);
  }

  /** (1/z)' = −z'/z². */
  Slope inverse() {
    double square = re * re + im * im;
    double r = re / square;
    double i = -im / square;
    double r2 = r * r - i * i;
    double i2 = 2 * r * i;
    return new Slope(r, i, -(dRe * r2 - dIm * i2), -(dRe * i2 + dIm * r2));
  }

  /** The value without its derivative. */
  Phasor value() {
    return new Phasor(re, im);
  }

  double modulus() {
    return Math.sqrt(re * re + im * im);
  }

  /** Angle in degrees, above −180 to 180. */
  double phaseDeg() {
    return Math.toDegrees(Math.atan2(im, re));
  }

  /** −dφ/dω in ms: the imaginary part of −z'/z. */
  double groupDelayMs() {
    return -1000 * (dIm * re - dRe * im) / (re * re + im * im);
  }
}
