package org.footwell.vehicle.faults;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** What explanations are worth against each other, the best worth 1, by logarithms of their worths. */
final class Posterior {

  /** What is this much less likely than the first is not sorted in, natural logarithm. */
  private static final double FAR = 18;

  private final double[] worths;
  private final double most;
  private final List<Integer> order;

  Posterior(double... worths) {
    this.worths = worths.clone();
    most = Arrays.stream(worths).max().orElse(0);
    order =
        IntStream.range(0, worths.length)
            .boxed()
            .filter(i -> worths[i] > most - FAR)
            .sorted(Comparator.comparingDouble((Integer i) -> -worths[i]))
            .toList();
  }

  /** Indexes of those that are not too far behind, the best first. */
  List<Integer> order() {
    return order;
  }

  /** What one is worth. */
  double of(int i) {
    return Math.exp(worths[i] - most);
  }

  /** What all in the order are worth together. */
  double total() {
    return order.stream().mapToDouble(this::of).sum();
  }
}
