package org.footwell.vehicle.questions;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.footwell.electrical.load.Network;

/**
 * A network at its rated impedances, by Kirchhoff's laws.
 *
 * @param ohm of the whole
 * @param power share of each driver in its power, all coils of the driver together
 */
record Shared(double ohm, Map<Integer, Double> power) {

  /**
   * Works a network out.
   *
   * @param driver whose coil a word names
   * @param ratedOhm of such a coil
   */
  static Shared of(
      Network<String> network,
      Function<String, Integer> driver,
      ToDoubleFunction<Integer> ratedOhm) {
    return network.fold(
        word -> {
          Integer named = driver.apply(word);
          return new Shared(ratedOhm.applyAsDouble(named), Map.of(named, 1.0));
        },
        parts -> group(parts, part -> part),
        parts -> group(parts, part -> 1 / part));
  }

  /** In series resistances add up, in parallel conductances; power goes with either. */
  private static Shared group(List<Shared> parts, DoubleUnaryOperator adding) {
    double sum = parts.stream().mapToDouble(part -> adding.applyAsDouble(part.ohm)).sum();
    Map<Integer, Double> power = new HashMap<>();
    for (Shared part : parts) {
      double share = adding.applyAsDouble(part.ohm) / sum;
      part.power.forEach((driver, inner) -> power.merge(driver, share * inner, Double::sum));
    }
    return new Shared(adding.applyAsDouble(sum), power);
  }
}
