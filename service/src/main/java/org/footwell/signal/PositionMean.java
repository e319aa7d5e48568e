package org.footwell.signal;

import org.footwell.physics.Decibels;

/** One curve of several microphone positions. */
public final class PositionMean {

  private final double[] powers;
  private final double[] levelsDb;
  private final double[] spreadDb;

  PositionMean(double[] powers, double[] levelsDb, double[] spreadDb) {
    this.powers = powers;
    this.levelsDb = levelsDb;
    this.spreadDb = spreadDb;
  }

  /**
   * Averages.
   *
   * @param powers one row per position
   * @param weights one per position
   */
  public static PositionMean of(double[][] powers, double[] weights) {
    int points = powers[0].length;
    double[] mean = new double[points];
    double[] levels = new double[points];
    double[] spread = new double[points];
    double all = 0;
    for (double weight : weights) {
      all += weight;
    }
    for (int i = 0; i < points; i++) {
      double level = 0;
      for (int m = 0; m < powers.length; m++) {
        mean[i] += weights[m] / all * powers[m][i];
        level += Response.levelDb(powers[m][i]) / powers.length;
      }
      double squares = 0;
      for (double[] one : powers) {
        double off = Response.levelDb(one[i]) - level;
        squares += off * off;
      }
      levels[i] = Math.max(Response.LOWEST_DB, Decibels.ofPower(mean[i]));
      spread[i] = powers.length == 1 ? 0 : Math.sqrt(squares / (powers.length - 1));
    }
    return new PositionMean(mean, levels, spread);
  }

  /** Weighted mean of the powers at every frequency. */
  public double[] powers() {
    return powers;
  }

  /** The same in dB, {@value Response#LOWEST_DB} or more. */
  public double[] levelsDb() {
    return levelsDb;
  }

  /** Standard deviation of the positions' levels in dB (of a sample, n − 1), 0 for one. */
  public double[] spreadDb() {
    return spreadDb;
  }
}
