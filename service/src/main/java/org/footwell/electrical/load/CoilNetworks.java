package org.footwell.electrical.load;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Every wiring of named coils, as text. */
public final class CoilNetworks {

  /** More would be hundreds of networks. */
  private static final int MOST_COILS = 6;

  private CoilNetworks() {}

  /**
   * The networks of some coils, of like ones each once, named from left to right; none of too many.
   *
   * @param ohm rated impedance of a coil; those of one impedance are alike
   */
  public static List<String> of(List<String> coils, ToDoubleFunction<String> ohm) {
    if (coils.size() > MOST_COILS) {
      return List.of();
    }
    Map<Double, List<String>> alike = new TreeMap<>();
    for (String coil : coils) {
      alike.computeIfAbsent(ohm.applyAsDouble(coil), any -> new ArrayList<>()).add(coil);
    }
    List<List<String>> kinds = List.copyOf(alike.values());
    List<Network<List<String>>> leaves = kinds.stream().map(Network::leaf).toList();
    return Networks.of(
            leaves, kinds.stream().map(List::size).toList(), Network::series, Network::parallel)
        .stream()
        .map(CoilNetworks::named)
        .toList();
  }

  private static String named(Network<List<String>> network) {
    Map<List<String>, Deque<String>> left = new TreeMap<>((a, b) -> a.get(0).compareTo(b.get(0)));
    return network.text(
        kind -> left.computeIfAbsent(kind, any -> new ArrayDeque<>(any)).removeFirst());
  }
}
