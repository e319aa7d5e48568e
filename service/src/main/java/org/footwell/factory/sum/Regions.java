package org.footwell.factory.sum;

import java.util.ArrayList;
import java.util.List;
import org.footwell.factory.sum.SignalSumResult.Region;

/** Where a sum stays beyond the tolerance. */
final class Regions {

  private Regions() {}

  /**
   * Regions of a sum on its grid.
   *
   * @param sign 1 for overlaps, −1 for holes
   */
  static List<Region> of(
      OutputSumSearch search, OutputSumSearch.Way way, double toleranceDb, int sign) {
    double[] levels = search.levels(way);
    double median = OutputSumSearch.median(levels);
    double[] grid = search.grid();
    List<Region> regions = new ArrayList<>();
    int start = -1;
    int worst = -1;
    for (int i = 0; i <= levels.length; i++) {
      boolean beyond = i < levels.length && sign * (levels[i] - median) > toleranceDb;
      if (beyond) {
        start = start < 0 ? i : start;
        worst = worst < 0 || sign * levels[i] > sign * levels[worst] ? i : worst;
      } else if (start >= 0) {
        double loss = search.inPhaseDb(way, grid[worst]) - levels[worst];
        regions.add(
            new Region(
                grid[start],
                grid[i - 1],
                Math.max(levels[worst] - median, -OutputSumSearch.DEEPEST_DB),
                grid[worst],
                Math.max(0, Math.min(OutputSumSearch.DEEPEST_DB, loss))));
        start = -1;
        worst = -1;
      }
    }
    return regions;
  }
}
