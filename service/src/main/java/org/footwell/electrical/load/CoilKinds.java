package org.footwell.electrical.load;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.footwell.parts.VoiceCoil;

/**
 * The coils by their rated impedance: those of the same one are equals, for swapping them changes
 * neither the load nor any share.
 *
 * @param names by impedance, from the lowest: the names of the coils as listed, an empty one for a
 *     coil without
 */
record CoilKinds(Map<Double, List<String>> names) {

  private static final String AT = "/coils";

  /** Sorts the coils. */
  static CoilKinds of(List<VoiceCoil> coils) {
    Map<Double, List<String>> names = new TreeMap<>();
    for (Coil coil : Coil.each(coils)) {
      names.computeIfAbsent(coil.ratedOhm(), ohm -> new ArrayList<>()).add(coil.name());
    }
    return new CoilKinds(names);
  }

  /** Every network of all the coils; each coil stands for its kind and has no name. */
  List<Solved> networks() {
    List<Solved> kinds =
        names.keySet().stream().map(ohm -> Solved.of(Coil.rated("", ohm, AT), ohm)).toList();
    List<Integer> counts = names.values().stream().map(List::size).toList();
    return Networks.of(kinds, counts, Solved::series, Solved::parallel);
  }

  /** The network with the names given out from left to right, equals in the order listed. */
  Network<Coil> named(Solved wiring) {
    Map<Double, Deque<String>> left = new TreeMap<>();
    names.forEach((ohm, all) -> left.put(ohm, new ArrayDeque<>(all)));
    return wiring.network(
        kind -> Coil.rated(left.get(kind.ratedOhm()).removeFirst(), kind.ratedOhm(), AT));
  }

  /** A coil as the circuit notation has it: by its name, or else its impedance. */
  static String written(Coil coil) {
    return coil.name().isEmpty()
        ? BigDecimal.valueOf(coil.ratedOhm()).stripTrailingZeros().toPlainString()
        : coil.name();
  }
}
