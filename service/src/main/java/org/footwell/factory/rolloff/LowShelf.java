package org.footwell.factory.rolloff;

import java.util.List;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;

/**
 * A low shelf of the second order with Q 0.7071 that comes as near to wanted gains as it can.
 *
 * @param gainDb gain far below its frequency, dB
 * @param frequencyHz where half the gain in dB is reached, Hz
 * @param errorDb largest difference from a wanted gain, dB
 */
record LowShelf(double gainDb, double frequencyHz, double errorDb) {

  static final Source COOKBOOK =
      Source.of(
          "R. Bristow-Johnson, Audio EQ Cookbook, W3C Working Group Note, 8 June 2021: analog low"
              + " shelf");

  private static final double Q = Math.sqrt(0.5);

  /** No shelf is meant to do more. */
  private static final double MOST_DB = 40;

  private static final int PER_OCTAVE = 24;

  /** The gain enters the shape a little, so it is found in a few rounds. */
  private static final int ROUNDS = 6;

  /**
   * Gain at x times its frequency, dB: H = A·(s² + s·√A/Q + A)/(A·s² + s·√A/Q + 1), A = 10^(G/40).
   */
  static double levelDb(double gainDb, double x) {
    double a = Math.pow(10, gainDb / 40);
    double square = x * x;
    double middle = a * square / (Q * Q);
    double above = (a - square) * (a - square) + middle;
    double below = (1 - a * square) * (1 - a * square) + middle;
    return Decibels.ofPower(a * a * above / below);
  }

  /** Least squares over all bands: every frequency tried, the gain that fits best there. */
  static LowShelf fit(List<Double> bandsHz, List<Double> wantedDb, double highestHz) {
    LowShelf best = null;
    double least = Double.POSITIVE_INFINITY;
    double lowest = bandsHz.get(0);
    int last = (int) Math.ceil(PER_OCTAVE * Math.log(highestHz / lowest) / Math.log(2));
    for (int i = 0; i <= last; i++) {
      double frequency = lowest * Math.pow(2, (double) i / PER_OCTAVE);
      double gain = gain(bandsHz, wantedDb, frequency);
      double sum = 0;
      double worst = 0;
      for (int b = 0; b < bandsHz.size(); b++) {
        double off = levelDb(gain, bandsHz.get(b) / frequency) - wantedDb.get(b);
        sum += off * off;
        worst = Math.max(worst, Math.abs(off));
      }
      if (sum < least) {
        least = sum;
        best = new LowShelf(gain, frequency, worst);
      }
    }
    return best;
  }

  private static double gain(List<Double> bandsHz, List<Double> wantedDb, double frequencyHz) {
    double gain = wantedDb.get(0);
    for (int round = 0; round < ROUNDS; round++) {
      double start = Math.abs(gain) < 0.01 ? 0.01 : gain;
      double product = 0;
      double square = 0;
      for (int b = 0; b < bandsHz.size(); b++) {
        double shape = levelDb(start, bandsHz.get(b) / frequencyHz) / start;
        product += shape * wantedDb.get(b);
        square += shape * shape;
      }
      gain = Math.max(-MOST_DB, Math.min(MOST_DB, product / square));
    }
    return gain;
  }
}
