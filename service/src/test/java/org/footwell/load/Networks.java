package org.footwell.load;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.commons.math3.fraction.BigFraction;

/** Every series-parallel network of like coils, once each up to the order of parts. */
final class Networks {

  private Networks() {}

  /** The networks of so many coils of 1 ohm. */
  static Collection<Network<BigFraction>> of(int coils) {
    Map<String, Network<BigFraction>> found = new TreeMap<>();
    if (coils == 1) {
      put(Network.leaf(BigFraction.ONE), found);
    }
    for (int left = 1; left <= coils / 2; left++) {
      for (Network<BigFraction> a : of(left)) {
        for (Network<BigFraction> b : of(coils - left)) {
          put(Network.series(List.of(a, b)), found);
          put(Network.parallel(List.of(a, b)), found);
        }
      }
    }
    return found.values();
  }

  private static void put(Network<BigFraction> network, Map<String, Network<BigFraction>> into) {
    into.putIfAbsent(canonical(network), network);
  }

  /** The same text for networks that differ in nothing but the order of parts. */
  private static String canonical(Network<BigFraction> network) {
    return network.fold(BigFraction::toString, sorted("s"), sorted("p"));
  }

  private static Function<List<String>, String> sorted(String kind) {
    return parts -> {
      List<String> inOrder = new ArrayList<>(parts);
      inOrder.sort(null);
      return kind + inOrder;
    };
  }

  /** Resistance in exact fractions. */
  static BigFraction exact(Network<BigFraction> network) {
    return network.fold(
        ohm -> ohm,
        parts -> sum(parts),
        parts -> sum(parts.stream().map(BigFraction::reciprocal).toList()).reciprocal());
  }

  private static BigFraction sum(List<BigFraction> parts) {
    return parts.stream().reduce(BigFraction.ZERO, BigFraction::add);
  }
}
