package org.footwell.physics;

/** Ratios in decibels. */
public final class Decibels {

  /** Peak over RMS of a sine: 20·log10(√2) = 3.0103 dB. */
  public static final double SINE_CREST = 20 * Math.log10(Math.sqrt(2));

  /** Sound pressure of 0 dB SPL in air, Pa RMS (ISO 1683). */
  public static final double SPL_REFERENCE_PA = 20e-6;

  private Decibels() {}

  /** A ratio of powers (above 0) in dB. */
  public static double ofPower(double ratio) {
    return 10 * Math.log10(ratio);
  }

  /** A ratio of amplitudes (above 0) in dB. */
  public static double ofAmplitude(double ratio) {
    return 20 * Math.log10(ratio);
  }

  /** The ratio of powers for a difference in dB. */
  public static double toPower(double db) {
    return Math.pow(10, db / 10);
  }

  /** The ratio of amplitudes for a difference in dB. */
  public static double toAmplitude(double db) {
    return Math.pow(10, db / 20);
  }
}
