package org.footwell.electrical.load;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.function.Function;

/**
 * Every series-parallel network of given coils, each once: none differs from another only by the
 * order of its parts or by the swapping of like coils.
 *
 * <p>A network in series is a choice, order aside, of two or more parts that are not in series
 * themselves, and together use every coil; in parallel likewise. Built up from the smallest choices
 * of coils, with parts chosen in ascending order, no network comes twice, so that none has to be
 * compared with another; and each part is made only once, however many networks share it.
 *
 * <p>A choice of coils is how many of each kind, written as one number with a digit per kind.
 *
 * @param <T> what a network is made as
 */
final class Networks<T> {

  private final int[] places;
  private final BitSet[] within;
  private final List<List<T>> notSeries = new ArrayList<>();
  private final List<List<T>> notParallel = new ArrayList<>();

  private Networks(List<Integer> counts) {
    this.places = new int[counts.size()];
    int choices = 1;
    for (int kind = 0; kind < places.length; kind++) {
      places[kind] = choices;
      choices *= counts.get(kind) + 1;
    }
    this.within = within(places, counts, choices);
    for (int choice = 0; choice < choices; choice++) {
      notSeries.add(new ArrayList<>());
      notParallel.add(new ArrayList<>());
    }
  }

  /**
   * The networks, those in parallel at their terminals first.
   *
   * @param kinds one coil of each kind, at least one
   * @param counts how many there are of each kind, at least 1
   * @param series makes a network of two or more parts in series
   * @param parallel makes a network of two or more parts in parallel
   */
  static <T> List<T> of(
      List<T> kinds,
      List<Integer> counts,
      Function<List<T>, T> series,
      Function<List<T>, T> parallel) {
    Networks<T> networks = new Networks<>(counts);
    for (int kind = 0; kind < kinds.size(); kind++) {
      networks.notSeries.get(networks.places[kind]).add(kinds.get(kind));
      networks.notParallel.get(networks.places[kind]).add(kinds.get(kind));
    }
    int all = networks.notSeries.size() - 1;
    for (int choice = 1; choice <= all; choice++) {
      List<T> inSeries = networks.groups(choice, networks.notSeries, series);
      List<T> inParallel = networks.groups(choice, networks.notParallel, parallel);
      networks.notParallel.get(choice).addAll(inSeries);
      networks.notSeries.get(choice).addAll(inParallel);
    }
    List<T> found = new ArrayList<>(networks.notSeries.get(all));
    if (all > 1) { // a single coil is in both
      found.addAll(networks.notParallel.get(all));
    }
    return found;
  }

  private List<T> groups(int choice, List<List<T>> parts, Function<List<T>, T> make) {
    List<T> groups = new ArrayList<>();
    choose(choice, 1, 0, parts, new ArrayDeque<>(), chosen -> groups.add(make.apply(chosen)));
    return groups;
  }

  /** Takes what it is given. */
  private interface Taker<T> {
    void take(List<T> chosen);
  }

  /** Chooses parts for what is left over, none before the one at {@code index} of {@code from}. */
  private void choose(
      int left, int from, int index, List<List<T>> parts, Deque<T> chosen, Taker<T> taker) {
    if (left == 0) {
      if (chosen.size() > 1) {
        taker.take(List.copyOf(chosen));
      }
      return;
    }
    BitSet possible = within[left];
    for (int choice = possible.nextSetBit(from);
        choice >= 0;
        choice = possible.nextSetBit(choice + 1)) {
      int rest = left - choice;
      // What remains must be nothing or leave room for a part that does not come before this one.
      if (rest != 0 && rest < choice) {
        continue;
      }
      List<T> these = parts.get(choice);
      for (int i = choice == from ? index : 0; i < these.size(); i++) {
        chosen.addLast(these.get(i));
        choose(rest, choice, i, parts, chosen, taker);
        chosen.removeLast();
      }
    }
  }

  /** For each choice those that have no more of any kind than it. */
  private static BitSet[] within(int[] places, List<Integer> counts, int choices) {
    BitSet[] within = new BitSet[choices];
    for (int choice = 0; choice < choices; choice++) {
      within[choice] = new BitSet(choices);
      for (int part = 0; part <= choice; part++) {
        within[choice].set(part, noMore(part, choice, places, counts));
      }
    }
    return within;
  }

  private static boolean noMore(int part, int whole, int[] places, List<Integer> counts) {
    for (int kind = 0; kind < places.length; kind++) {
      int base = counts.get(kind) + 1;
      if (part / places[kind] % base > whole / places[kind] % base) {
        return false;
      }
    }
    return true;
  }
}
