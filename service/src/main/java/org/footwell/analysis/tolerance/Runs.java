package org.footwell.analysis.tolerance;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.footwell.analysis.Point;
import org.footwell.calculation.Verdict;

/**
 * What a calculation came to in many runs, all at once and in their order, however many threads there
 * are.
 */
final class Runs {

  private final double[][] outputs;
  private final Verdict[] verdicts;
  private final Map<Refusal, Integer> refusals = new ConcurrentHashMap<>();

  /**
   * Why runs were not answered.
   *
   * @param pointer the faulty place in the request to the calculation
   */
  private record Refusal(String pointer, String code) {}

  Runs(int count, int outputCount, IntFunction<Point> run) {
    this.outputs = new double[outputCount][count];
    this.verdicts = new Verdict[count];
    IntStream.range(0, count).parallel().forEach(n -> keep(n, run.apply(n)));
  }

  private void keep(int n, Point point) {
    verdicts[n] = point.verdict();
    for (int i = 0; i < outputs.length; i++) {
      outputs[i][n] = point.number(i);
    }
    if (point.refused() != null) {
      point.refused().faults().stream()
          .map(fault -> new Refusal(fault.pointer(), fault.code()))
          .distinct()
          .forEach(refusal -> refusals.merge(refusal, 1, Integer::sum));
    }
  }

  /** An output in the runs of a block of so many; not a number where there was none. */
  double[] output(int output, int block, int count) {
    return Arrays.copyOfRange(outputs[output], block * count, (block + 1) * count);
  }

  /** Share of the first so many runs that ended in a verdict; of those refused for null. */
  double share(Verdict verdict, int count) {
    return (double) Arrays.stream(verdicts, 0, count).filter(one -> one == verdict).count() / count;
  }

  /** Why runs were refused, the commonest first. */
  List<RefusedRuns> refusals() {
    return refusals.entrySet().stream()
        .map(one -> new RefusedRuns(one.getKey().pointer(), one.getKey().code(), one.getValue()))
        .sorted(
            Comparator.comparing(RefusedRuns::runCount)
                .reversed()
                .thenComparing(RefusedRuns::pointer)
                .thenComparing(RefusedRuns::code))
        .toList();
  }
}
