package org.footwell.signal;

import java.util.Arrays;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;

/**
 * A tone, its harmonics and the noise between them, from the windowed spectrum of a capture. All RMS,
 * in the unit of the samples.
 *
 * @param fundamentalHz tracked frequency of the tone, Hz
 * @param fundamental RMS of the tone
 * @param each RMS of the second harmonic, the third and so on up to the band's edge
 * @param even RMS of the even harmonics together
 * @param odd RMS of the odd harmonics together, without the tone
 * @param all RMS of all harmonics together
 * @param noise RMS of what lies between the harmonics up to the band's edge, noise and hum
 * @param floor harmonics that are together below this RMS cannot be told from the noise
 * @param hum of the mains, part of the noise, or null where none is seen
 */
@Built
public record Harmonics(
    double fundamentalHz,
    double fundamental,
    List<Double> each,
    double even,
    double odd,
    double all,
    double noise,
    double floor,
    Hum hum) {

  public static final Source METHOD =
      Source.of(
          "Power of spectral lines by Parseval's theorem over the main lobes of a four-term"
              + " Blackman-Harris window, the median between them taken as noise");

  /** Fewer periods leave no room for noise between the main lobes. */
  public static final double FEWEST_PERIODS = 12;

  /** Half a main lobe, in bins of an unpadded transform. */
  static final double HALF_LOBE = 4;

  /** Less of all power is no tone: even a square wave has 0.81 of it in its fundamental. */
  private static final double LEAST_SHARE = 0.25;

  /** A quarter weaker than this against another is as good as silent. */
  private static final double LEAST_QUARTER = 1e-6;

  /**
   * Takes a capture apart.
   *
   * @param nearHz about where the tone is, within 5 %; null for the strongest line
   * @param edgeHz the highest frequency that counts; never above half the rate less a lobe
   * @return null if there is no tone of {@link #FEWEST_PERIODS} periods with a quarter of all power
   */
  public static Harmonics of(double[] capture, double rateHz, Double nearHz, double edgeHz) {
    double[] samples = withoutMean(capture);
    SpectralLines lines = SpectralLines.of(samples, rateHz);
    double lowest = FEWEST_PERIODS * rateHz / samples.length;
    double from = nearHz == null ? lowest : Math.max(lowest, 0.95 * nearHz);
    double to = nearHz == null ? highestHz(samples.length, rateHz) : 1.05 * nearHz;
    double strongest = lines.strongestHz(from, to);
    if (Double.isNaN(strongest)) {
      return null;
    }
    double tone = refined(samples, rateHz, strongest);
    double edge = Math.min(edgeHz, highestHz(samples.length, rateHz));
    if (tone < lowest * (1 - 1e-9) || tone > edge) {
      return null;
    }
    Harmonics apart = lines.apart(tone, edge);
    boolean stands =
        apart != null && apart.fundamental * apart.fundamental > LEAST_SHARE * lines.total();
    return stands ? apart : null;
  }

  /** The highest frequency whose main lobe lies below half the rate. */
  public static double highestHz(int samples, double rateHz) {
    return rateHz / 2 - (HALF_LOBE + 1) * rateHz / samples;
  }

  /** How far the tone's level moves between the quarters of a capture, dB. */
  public static double unsteadinessDb(double[] samples, double rateHz, double toneHz) {
    double[] window = Window.HANN.periodic(samples.length / 4);
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int quarter = 0; quarter < 4; quarter++) {
      double[] there =
          phasor(samples, quarter * window.length, window, 2 * Math.PI * toneHz / rateHz);
      double size = Math.hypot(there[0], there[1]);
      least = Math.min(least, size);
      most = Math.max(most, size);
    }
    return Decibels.ofAmplitude(most / Math.max(least, most * LEAST_QUARTER));
  }

  private static double[] withoutMean(double[] capture) {
    double mean = Arrays.stream(capture).average().orElse(0);
    return Arrays.stream(capture).map(x -> x - mean).toArray();
  }

  /** A frequency known to a bin or so, from how its phase moves between the two halves. */
  private static double refined(double[] samples, double rateHz, double nearHz) {
    int half = samples.length / 2;
    double[] window = Window.BLACKMAN_HARRIS.periodic(half);
    double turn = 2 * Math.PI * nearHz / rateHz;
    double[] first = phasor(samples, 0, window, turn);
    double[] second = phasor(samples, half, window, turn);
    double re = second[0] * first[0] + second[1] * first[1];
    double im = second[1] * first[0] - second[0] * first[1];
    return nearHz + Math.atan2(im, re) / (2 * Math.PI) * rateHz / half;
  }

  private static double[] phasor(double[] samples, int from, double[] window, double turn) {
    double re = 0;
    double im = 0;
    for (int n = 0; n < window.length; n++) {
      double value = window[n] * samples[from + n];
      re += value * Math.cos(turn * (from + n));
      im -= value * Math.sin(turn * (from + n));
    }
    return new double[] {re, im};
  }
}
