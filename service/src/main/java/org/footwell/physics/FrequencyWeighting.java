package org.footwell.physics;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** Frequency weightings A and C, by the pole frequencies of the standard. */
public final class FrequencyWeighting {

  public static final Source IEC_61672_1 =
      Source.of("IEC 61672-1:2013, Sound level meters, Annex E: analytical expressions");

  // The range of the standard's table, Hz.
  private static final double LOWEST_HZ = 10;
  private static final double HIGHEST_HZ = 20_000;

  // Pole frequencies, Hz, as approximated in the standard.
  private static final double F1 = 20.60;
  private static final double F2 = 107.7;
  private static final double F3 = 737.9;
  private static final double F4 = 12194;

  // Weightings at 1 kHz before normalisation, dB, so that they are 0 there.
  private static final double A_1000 = Decibels.ofAmplitude(unnormalisedA(1000));
  private static final double C_1000 = Decibels.ofAmplitude(unnormalisedC(1000));

  /** A-weighting in dB at a frequency in Hz, above 0; 0 at 1 kHz. */
  public static final Formula.Of1 A =
      Formula.of(
              "a_weighting_db",
              "20·lg(12194²·f⁴/((f² + 20.60²)·√((f² + 107.7²)·(f² + 737.9²))·(f² + 12194²))) + 2.00",
              "dB",
              IEC_61672_1)
          .with("f", f -> Decibels.ofAmplitude(unnormalisedA(f)) - A_1000);

  /** C-weighting in dB at a frequency in Hz, above 0; 0 at 1 kHz. */
  public static final Formula.Of1 C =
      Formula.of(
              "c_weighting_db",
              "20·lg(12194²·f²/((f² + 20.60²)·(f² + 12194²))) + 0.06",
              "dB",
              IEC_61672_1)
          .with("f", f -> Decibels.ofAmplitude(unnormalisedC(f)) - C_1000);

  /**
   * What the A-weighted level of any sound can be above its C-weighted one, dB: the weightings are
   * farthest apart towards high frequencies, where only the norming at 1 kHz is left between them.
   */
  public static final double MOST_A_OVER_C_DB = C_1000 - A_1000;

  private FrequencyWeighting() {}

  /** Whether the weightings are standardized at a frequency in Hz, nominal or exact. */
  public static boolean covers(double frequencyHz) {
    double exact = ThirdOctaves.exactHz(frequencyHz);
    return exact >= ThirdOctaves.exactHz(LOWEST_HZ) && exact <= ThirdOctaves.exactHz(HIGHEST_HZ);
  }

  private static double unnormalisedA(double f) {
    double q = f * f;
    return unnormalisedC(f) * q / Math.sqrt((q + F2 * F2) * (q + F3 * F3));
  }

  private static double unnormalisedC(double f) {
    double q = f * f;
    return F4 * F4 * q / ((q + F1 * F1) * (q + F4 * F4));
  }
}
