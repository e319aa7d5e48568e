package org.footwell.factorysignal;

import java.util.ArrayList;
import java.util.List;
import org.footwell.factorysignal.SignalSumResult.Region;

/** Where a sum stays beyond the tolerance. */
final class Regions {

  private Regions() {}

  /**
   * Regions of a sum on its grid.
   *
   * @param sign 1 for overlaps, −1 for holes
   */
  static List<Region> of(SumSearch search, SumSearch.Way way, double toleranceDb, int sign) {
    double[] levels = search.levels(way);
    double median = SumSearch.median(levels);
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
                Math.max(levels[worst] - median, -SumSearch.DEEPEST_DB),
                grid[worst],
                Math.max(0, Math.min(SumSearch.DEEPEST_DB, loss))));
        start = -1;
        worst = -1;
      }
    }
    return regions;
  }
}
