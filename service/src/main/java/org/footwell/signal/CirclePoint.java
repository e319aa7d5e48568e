package org.footwell.signal;

/**
 * A frequency as a point on the unit circle, with the squares that keep their digits near both ends
 * of the band, where 1 − cos ω would lose them.
 *
 * @param radians ω = 2π·f/rate, from 0 to π
 * @param sine sin ω
 * @param sineSquare sin²(ω/2)
 * @param cosineSquare cos²(ω/2)
 */
public record CirclePoint(double radians, double sine, double sineSquare, double cosineSquare) {

  /** The point of a frequency in Hz, above 0 and below half the sample rate in Hz. */
  public static CirclePoint of(double frequencyHz, double rateHz) {
    double half = Math.PI * frequencyHz / rateHz;
    double s = Math.sin(half);
    double c = Math.cos(half);
    return new CirclePoint(2 * half, 2 * s * c, s * s, c * c);
  }

  /** Points of many frequencies at one sample rate, to be used over and over. */
  public static CirclePoint[] of(double[] frequenciesHz, double rateHz) {
    CirclePoint[] points = new CirclePoint[frequenciesHz.length];
    for (int i = 0; i < points.length; i++) {
      points[i] = of(frequenciesHz[i], rateHz);
    }
    return points;
  }

  /** cos ω. */
  double cosine() {
    return cosineSquare - sineSquare;
  }

  /** Whether it is in the lower half of the band. */
  boolean low() {
    return sineSquare < 0.5;
  }
}
