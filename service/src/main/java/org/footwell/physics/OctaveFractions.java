package org.footwell.physics;

/** Exact mid-band frequencies of fractions of an octave, base ten, after IEC 61260-1. */
public final class OctaveFractions {

  /** Octave ratio of the base-ten system. */
  public static final double RATIO = Math.pow(10, 0.3);

  private static final double REFERENCE_HZ = 1000;

  private OctaveFractions() {}

  /** The x-th mid-band frequency, Hz, b to the octave: G^(x/b) for odd b, G^((2x + 1)/(2b)) for even b. */
  public static double midBandHz(int x, int b) {
    double octaves = b % 2 == 1 ? (double) x / b : (2 * x + 1) / (2.0 * b);
    return REFERENCE_HZ * Math.pow(RATIO, octaves);
  }
}
