package org.footwell.vehicle.chain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Where a lower channel hands over to those above it: it has one delay for all of them.
 *
 * @param lower index of its channel
 * @param ups those above it
 */
public record Crossing(int lower, List<Up> ups) {

  /**
   * One of them.
   *
   * @param upper index of the channel
   * @param frequencyHz where they meet
   * @param crossover index of the crossover in the plan
   */
  public record Up(int upper, double frequencyHz, int crossover) {}

  /** The highest frequency at which it hands over, Hz. */
  public double highestHz() {
    return ups.stream().mapToDouble(Up::frequencyHz).max().orElseThrow();
  }

  /** Those that meet it at one frequency together, from the lowest frequency up. */
  Collection<List<Up>> together() {
    Map<Double, List<Up>> byHz = new TreeMap<>();
    for (Up up : ups) {
      byHz.computeIfAbsent(up.frequencyHz(), hz -> new ArrayList<>()).add(up);
    }
    return byHz.values();
  }

  /** Those that meet it below a frequency in Hz. */
  Crossing upTo(double hz) {
    return new Crossing(lower, ups.stream().filter(up -> up.frequencyHz() <= hz).toList());
  }
}
