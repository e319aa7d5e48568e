package org.footwell.signal;

import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.FilterPrototype;

/**
 * Digital sections from analog ones by the bilinear transform s = (1 − z⁻¹)/(k·(1 + z⁻¹)), with k
 * such that the section's own frequency stays where it is (prewarping).
 *
 * <p>Frequencies in Hz, above 0 and below half the sample rate.
 */
public final class SectionDesign {

  public static final Source COOKBOOK =
      Source.of(
          "R. Bristow-Johnson, Audio EQ Cookbook, W3C Working Group Note, 8 June 2021: analog"
              + " prototypes, bilinear transform, prewarping");

  /** k: the frequency f in Hz at the sample rate fs in Hz as the bilinear transform warps it. */
  public static final Formula.Of2 PREWARP =
      Formula.of("prewarped_ratio", "tan(π·f/fs)", "", COOKBOOK)
          .with("f", "fs", (f, fs) -> Math.tan(Math.PI * f / fs));

  /** A: the square root of the amplitude at the full gain in dB, so that A stands at half of it. */
  public static final Formula.Of1 HALF_GAIN =
      Formula.of("half_gain_ratio", "10^(G/40)", "", COOKBOOK)
          .with("G", gainDb -> Math.pow(10, gainDb / 40));

  private SectionDesign() {}

  /** The sections of a low- or high-pass; as the analog filter exactly at its corner. */
  public static List<Biquad> of(AnalogFilter filter, double rateHz) {
    double k = PREWARP.at(filter.cornerHz(), rateHz);
    return filter.sections().stream().map(s -> section(filter.highPass(), s, k)).toList();
  }

  private static Biquad section(boolean highPass, FilterPrototype.Section s, double k) {
    double low = highPass ? 0 : 1;
    double high = highPass ? 1 : 0;
    double here = k * s.w0();
    return s.order() == 1
        ? first(here, low, high, 1, 1)
        : second(here, new double[] {low, 0, high}, new double[] {1, 1 / s.q(), 1});
  }

  /** H = (s² + s·A/Q + 1)/(s² + s/(A·Q) + 1): Q is f/bandwidth between the points of half gain. */
  public static Biquad peak(double frequencyHz, double q, double gainDb, double rateHz) {
    double a = HALF_GAIN.at(gainDb);
    return second(
        PREWARP.at(frequencyHz, rateHz),
        new double[] {1, a / q, 1},
        new double[] {1, 1 / (a * q), 1});
  }

  /** H = A·(s² + s·√A/Q + A)/(A·s² + s·√A/Q + 1): half the gain in dB at the frequency. */
  public static Biquad lowShelf(double frequencyHz, double q, double gainDb, double rateHz) {
    double a = HALF_GAIN.at(gainDb);
    double middle = Math.sqrt(a) / q;
    return second(
        PREWARP.at(frequencyHz, rateHz),
        new double[] {a * a, a * middle, a},
        new double[] {1, middle, a});
  }

  /** H = A·(A·s² + s·√A/Q + 1)/(s² + s·√A/Q + A): half the gain in dB at the frequency. */
  public static Biquad highShelf(double frequencyHz, double q, double gainDb, double rateHz) {
    double a = HALF_GAIN.at(gainDb);
    double middle = Math.sqrt(a) / q;
    return second(
        PREWARP.at(frequencyHz, rateHz),
        new double[] {a, a * middle, a * a},
        new double[] {a, middle, 1});
  }

  /** H = (s + A)/(s + 1/A), of the first order: half the gain in dB at the frequency. */
  public static Biquad lowShelfFirst(double frequencyHz, double gainDb, double rateHz) {
    double a = HALF_GAIN.at(gainDb);
    return first(PREWARP.at(frequencyHz, rateHz), a, 1, 1 / a, 1);
  }

  /** H = (A·s + 1)/(s/A + 1), of the first order: half the gain in dB at the frequency. */
  public static Biquad highShelfFirst(double frequencyHz, double gainDb, double rateHz) {
    double a = HALF_GAIN.at(gainDb);
    return first(PREWARP.at(frequencyHz, rateHz), 1, a, 1, 1 / a);
  }

  /** H = (1 − s)/(1 + s): −90 degrees at the frequency, from 0 to −180. */
  public static Biquad allPassFirst(double frequencyHz, double rateHz) {
    return first(PREWARP.at(frequencyHz, rateHz), 1, -1, 1, 1);
  }

  /** H = (s² − s/Q + 1)/(s² + s/Q + 1): −180 degrees at the frequency, from 0 to −360. */
  public static Biquad allPass(double frequencyHz, double q, double rateHz) {
    return second(
        PREWARP.at(frequencyHz, rateHz), new double[] {1, -1 / q, 1}, new double[] {1, 1 / q, 1});
  }

  /** H = (s² + 1)/(s² + s/Q + 1): Q is f/bandwidth between the −3.01 dB points. */
  public static Biquad notch(double frequencyHz, double q, double rateHz) {
    return second(
        PREWARP.at(frequencyHz, rateHz), new double[] {1, 0, 1}, new double[] {1, 1 / q, 1});
  }

  /** (n0 + n1·s)/(d0 + d1·s). */
  private static Biquad first(double k, double n0, double n1, double d0, double d1) {
    double scale = 1 / (d0 * k + d1);
    return new Biquad(scale * (n0 * k + n1), scale * (n0 * k - n1), 0, scale * (d0 * k - d1), 0);
  }

  /** (n0 + n1·s + n2·s²)/(d0 + d1·s + d2·s²). */
  private static Biquad second(double k, double[] n, double[] d) {
    double square = k * k;
    double scale = 1 / (d[0] * square + d[1] * k + d[2]);
    return new Biquad(
        scale * (n[0] * square + n[1] * k + n[2]),
        scale * (2 * (n[0] * square - n[2])),
        scale * (n[0] * square - n[1] * k + n[2]),
        scale * (2 * (d[0] * square - d[2])),
        scale * (d[0] * square - d[1] * k + d[2]));
  }
}
