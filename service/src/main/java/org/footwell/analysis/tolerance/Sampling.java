package org.footwell.analysis.tolerance;

/**
 * Which values each run puts in. The first block of runs are the samples; for Sobol' indices a second
 * block follows that has nothing to do with it, and for each draw the first once more with that draw
 * taken from the second.
 */
final class Sampling {

  private static final int BEFORE_EXCHANGED = 2;

  private final int count;
  private final int draws;
  private final boolean indices;
  private final double[][] points;
  private final double[][] ranks;

  /**
   * Draws the samples.
   *
   * @param count number of samples
   * @param draws how many things move on their own
   */
  Sampling(int count, int draws, boolean indices, int seed) {
    this.count = count;
    this.draws = draws;
    this.indices = indices;
    this.points = SamplePoints.of(count, indices ? 2 * draws : draws, seed);
    this.ranks = new double[draws][];
  }

  /** Runs that one sample takes. */
  static int runsOfOne(int draws, boolean indices) {
    return indices ? draws + BEFORE_EXCHANGED : 1;
  }

  int count() {
    return count;
  }

  int draws() {
    return draws;
  }

  int runCount() {
    return count * runsOfOne(draws, indices);
  }

  boolean hasIndices() {
    return indices;
  }

  /** The block with a draw exchanged. */
  static int exchanged(int draw) {
    return BEFORE_EXCHANGED + draw;
  }

  /** What the draws came to in a run. */
  Uncertainties.Shares shares(int run) {
    int block = run / count;
    int sample = run % count;
    return draw -> points[block == 1 || block == exchanged(draw) ? draws + draw : draw][sample];
  }

  /** What a draw came to in each sample. */
  double[] drawn(int draw) {
    return points[draw];
  }

  /** The order of the samples by what a draw came to. */
  double[] ranks(int draw) {
    if (ranks[draw] == null) {
      ranks[draw] = RankCorrelation.ranks(points[draw]);
    }
    return ranks[draw];
  }
}
