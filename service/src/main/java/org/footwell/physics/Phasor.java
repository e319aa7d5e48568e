package org.footwell.physics;

/** A complex number: an impedance in ohm, a ratio of voltages, or an angle and a size. */
public record Phasor(double re, double im) {

  public static final Phasor ONE = new Phasor(1, 0);

  public static final Phasor ZERO = new Phasor(0, 0);

  /** By its size and its angle in degrees. */
  public static Phasor ofPolar(double modulus, double phaseDeg) {
    double angle = Math.toRadians(phaseDeg);
    return new Phasor(modulus * Math.cos(angle), modulus * Math.sin(angle));
  }

  public Phasor plus(Phasor other) {
    return new Phasor(re + other.re, im + other.im);
  }

  /** With a resistance, or another number without a phase. */
  public Phasor plus(double real) {
    return new Phasor(re + real, im);
  }

  public Phasor minus(Phasor other) {
    return new Phasor(re - other.re, im - other.im);
  }

  public Phasor times(Phasor other) {
    return new Phasor(re * other.re - im * other.im, re * other.im + im * other.re);
  }

  public Phasor times(double factor) {
    return new Phasor(re * factor, im * factor);
  }

  public Phasor over(Phasor other) {
    double square = other.re * other.re + other.im * other.im;
    return new Phasor(
        (re * other.re + im * other.im) / square, (im * other.re - re * other.im) / square);
  }

  /** One over it: an admittance from an impedance, or back. */
  public Phasor inverse() {
    double square = re * re + im * im;
    return new Phasor(re / square, -im / square);
  }

  /** What two impedances are in parallel. */
  public Phasor parallel(Phasor other) {
    return times(other).over(plus(other));
  }

  public double modulus() {
    return Math.sqrt(re * re + im * im);
  }

  /** Square of the modulus. */
  public double square() {
    return re * re + im * im;
  }

  /** Angle in degrees, above −180 to 180. */
  public double phaseDeg() {
    return Math.toDegrees(Math.atan2(im, re));
  }
}
