package org.footwell.electrical.load;

import static org.footwell.electrical.load.OptionsFault.TOO_MANY_COILS;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
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

  /** Most coils of one rated impedance: 522 networks. */
  static final int MOST_ALIKE = 8;

  /** Most coils that differ: 5504 networks when no two are alike. */
  static final int MOST_UNLIKE = 6;

  /** Sorts the coils; refuses names that clash and coils that are too many. */
  static CoilKinds of(List<VoiceCoil> coils, Run run) {
    Map<Double, List<String>> names = new TreeMap<>();
    for (Coil coil : Coil.each(coils, run)) {
      names.computeIfAbsent(coil.ratedOhm(), ohm -> new ArrayList<>()).add(coil.name());
    }
    CoilKinds kinds = new CoilKinds(names);
    kinds.refuseTooMany(run);
    return kinds;
  }

  private void refuseTooMany(Run run) {
    int all = names.values().stream().mapToInt(List::size).sum();
    boolean alike = names.size() == 1;
    if (all > (alike ? MOST_ALIKE : MOST_UNLIKE)) {
      run.refuse(TOO_MANY_COILS)
          .at(AT)
          .given(
              Phrase.of(alike ? NetworkWords.COILS_ALIKE : NetworkWords.COILS_UNLIKE)
                  .with("count", all))
          .allowed(
              Phrase.of(NetworkWords.COILS_IN_ALL)
                  .with("alike", MOST_ALIKE)
                  .with("unlike", MOST_UNLIKE));
    }
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
