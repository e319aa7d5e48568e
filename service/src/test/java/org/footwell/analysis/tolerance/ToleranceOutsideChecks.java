package org.footwell.analysis.tolerance;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

/** The mathematics of the error budget against SciPy, and against functions whose indices are known. */
class ToleranceOutsideChecks extends OutsideChecks {

  private static final int POINTS = 32;
  private static final long[][] SEQUENCE = SamplePoints.digits(POINTS, SamplePoints.TOGETHER);

  private static final Map<String, List<Estimate>> INDICES = new ConcurrentHashMap<>();

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("tolerance", "Sobol' points, not shifted", "scipy-sobol-points.csv")
            .printed("value")
            .computed(
                row -> SEQUENCE[index(row, "coordinate")][index(row, "point")] * SamplePoints.UNIT)
            .within(0),
        OutsideCheck.of("tolerance", "quantile of a distribution", "scipy-distributions.csv")
            .printed("quantile")
            .computed(row -> law(row).quantile(row.number("share")))
            .within(1e-9),
        OutsideCheck.of("tolerance", "deviation of a distribution", "scipy-distributions.csv")
            .printed("deviation")
            .computed(row -> law(row).deviation())
            .within(1e-10),
        OutsideCheck.of("tolerance", "rank correlation", "scipy-rank-correlations.csv")
            .printed("correlation")
            .computed(row -> RankCorrelation.of(ranks(row, "first"), ranks(row, "second")).value())
            .within(1e-10),
        index("first order", "first_order", 0),
        index("total", "total", 1));
  }

  /** With so many samples the estimate is off by less than a hundredth. */
  private static OutsideCheck index(String name, String column, int which) {
    ToDoubleFunction<Row> computed =
        row -> indices(row.text("function"), index(row, "input")).get(which).value();
    return OutsideCheck.of("tolerance", "Sobol' index, " + name, "sobol-indices.csv")
        .printed(column)
        .computed(computed)
        .within(0.01);
  }

  private static List<Estimate> indices(String function, int input) {
    KnownFunction known = KnownFunction.valueOf(function.toUpperCase(Locale.ROOT));
    return INDICES.computeIfAbsent(function + input, first -> known.indices(1 << 14, 1, input));
  }

  private static int index(Row row, String column) {
    return (int) row.number(column);
  }

  private static Distribution law(Row row) {
    return Distribution.valueOf(row.text("distribution").toUpperCase(Locale.ROOT));
  }

  private static double[] ranks(Row row, String column) {
    return RankCorrelation.ranks(
        Arrays.stream(row.text(column).split(" ", -1)).mapToDouble(Double::parseDouble).toArray());
  }
}
