package org.footwell.impedance;

/** A complex number: an impedance in ohm, a ratio of voltages, or an angle and a size. */
record Phasor(double re, double im) {

  static final Phasor ONE = new Phasor(1, 0);

  Phasor plus(Phasor other) {
    return new Phasor(re + other.re, im + other.im);
  }

  Phasor times(Phasor other) {
    return new Phasor(re * other.re - im * other.im, re * other.im + im * other.re);
  }

  Phasor times(double factor) {
    return new Phasor(re * factor, im * factor);
  }

  Phasor over(Phasor other) {
    double square = other.re * other.re + other.im * other.im;
    return new Phasor(
        (re * other.re + im * other.im) / square, (im * other.re - re * other.im) / square);
  }

  /** What two impedances are in parallel. */
  Phasor parallel(Phasor other) {
    return times(other).over(plus(other));
  }

  double modulus() {
    return Math.sqrt(re * re + im * im);
  }

  /** Angle in degrees, above −180 to 180. */
  double phaseDeg() {
    return Math.toDegrees(Math.atan2(im, re));
  }
}
