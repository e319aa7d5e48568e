package org.footwell.signal;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.footwell.physics.Decibels;

/** One curve of several microphone positions. */
public final class PositionMean {

  private final double[] powers;
  private final double[] levelsDb;
  private final double[][] positionsDb;

  PositionMean(double[] powers, double[] levelsDb, double[][] positionsDb) {
    this.powers = powers;
    this.levelsDb = levelsDb;
    this.positionsDb = positionsDb;
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
    double all = Arrays.stream(weights).sum();
    for (int i = 0; i < points; i++) {
      for (int m = 0; m < powers.length; m++) {
        mean[i] += weights[m] / all * powers[m][i];
      }
      levels[i] = Math.max(Response.LOWEST_DB, Decibels.ofPower(mean[i]));
    }
    double[][] positions =
        Arrays.stream(powers)
            .map(one -> Arrays.stream(one).map(Response::levelDb).toArray())
            .toArray(double[][]::new);
    return new PositionMean(mean, levels, positions);
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
    return spread(positionsDb);
  }

  /**
   * The same about each position's own level from one point to another, both included: what is louder
   * or quieter throughout adds nothing. That level is the median of how far the position stands from
   * the mean of all in dB, so that its own dips hardly move it.
   */
  public double[] spreadOfFormDb(int first, int last) {
    double[] middle = middle(positionsDb);
    double[][] forms = new double[positionsDb.length][];
    for (int m = 0; m < forms.length; m++) {
      double[] own = positionsDb[m];
      double level =
          median(IntStream.rangeClosed(first, last).mapToDouble(i -> own[i] - middle[i]).toArray());
      forms[m] = IntStream.rangeClosed(first, last).mapToDouble(i -> own[i] - level).toArray();
    }
    return spread(forms);
  }

  private static double[] middle(double[][] rows) {
    double[] middle = new double[rows[0].length];
    for (double[] row : rows) {
      Arrays.setAll(middle, i -> middle[i] + row[i] / rows.length);
    }
    return middle;
  }

  private static double[] spread(double[][] rows) {
    double[] middle = middle(rows);
    double[] squares = new double[middle.length];
    for (double[] row : rows) {
      Arrays.setAll(squares, i -> squares[i] + (row[i] - middle[i]) * (row[i] - middle[i]));
    }
    int freedom = Math.max(1, rows.length - 1);
    return Arrays.stream(squares).map(sum -> Math.sqrt(sum / freedom)).toArray();
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    return (values[(values.length - 1) / 2] + values[values.length / 2]) / 2;
  }
}
