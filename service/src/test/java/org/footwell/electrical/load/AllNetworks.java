package org.footwell.electrical.load;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.math3.fraction.BigFraction;

/** Every network of a few coils, with its resistance in exact fractions, for tests. */
final class AllNetworks {

  private AllNetworks() {}

  /** The networks of so many coils of 1 ohm. */
  static List<Network<BigFraction>> alike(int coils) {
    return of(List.of(BigFraction.ONE), List.of(coils));
  }

  static <C> List<Network<C>> of(List<C> kinds, List<Integer> counts) {
    List<Network<C>> leaves = kinds.stream().map(Network::leaf).toList();
    return Networks.of(leaves, counts, Network::series, Network::parallel);
  }

  /** The networks of so many coils no two of which are alike. */
  static List<Network<Integer>> unlike(int coils) {
    List<Integer> kinds = new ArrayList<>();
    for (int i = 1; i <= coils; i++) {
      kinds.add(i);
    }
    return of(kinds, Collections.nCopies(coils, 1));
  }

  /** The same text for networks that differ in nothing but the order of parts. */
  static String canonical(Network<?> network) {
    return network.fold(Object::toString, sorted("s"), sorted("p"));
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
