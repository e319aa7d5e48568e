package org.footwell.signal;

/**
 * c0 + c1·z⁻¹ + c2·z⁻² on the unit circle. Everything is computed of z·P(z), which is real but for
 * (c0 − c2)·sin ω: multiplied out directly, the three terms of a low corner would cancel to a few
 * digits.
 */
record Quadratic(double c0, double c1, double c2) {

  /** Its value at zero frequency: exact but for one rounding, since c1 is near −2·c0. */
  double sum() {
    return c0 + c1 + c2;
  }

  /** Its value at half the sample rate. */
  double alternating() {
    return c0 - c1 + c2;
  }

  /** Real part of z·P: c1 + (c0 + c2)·cos ω. */
  double real(CirclePoint p) {
    return p.low()
        ? sum() - 2 * (c0 + c2) * p.sineSquare()
        : 2 * (c0 + c2) * p.cosineSquare() - alternating();
  }

  /** Imaginary part of z·P. */
  double imaginary(CirclePoint p) {
    return (c0 - c2) * p.sine();
  }

  /** Squared modulus. */
  double power(CirclePoint p) {
    double re = real(p);
    double im = imaginary(p);
    return re * re + im * im;
  }

  /** Group delay of z·P in samples, times the squared modulus. */
  double delayTimesPower(CirclePoint p) {
    double lever =
        p.low() ? sum() - 2 * c1 * p.sineSquare() : alternating() + 2 * c1 * p.cosineSquare();
    return (c2 - c0) * lever;
  }

  /**
   * Derivative of ln|P| with respect to ω, times the squared modulus.
   *
   * @param real what {@link #real} gives
   */
  double slopeTimesPower(CirclePoint p, double real) {
    double difference = c0 - c2;
    return p.sine() * (difference * difference * p.cosine() - (c0 + c2) * real);
  }
}
