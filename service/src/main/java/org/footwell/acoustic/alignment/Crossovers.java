package org.footwell.acoustic.alignment;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.parts.Crossover;

/** Which channel hands over to which. */
final class Crossovers {

  private final SeatDelaysRequest q;
  private final Roster roster;

  Crossovers(SeatDelaysRequest q) {
    this.q = q;
    this.roster = new Roster(q);
  }

  List<Crossover> all() {
    return Roster.orNone(q.crossovers());
  }

  /** Whether all are between channels that there are. */
  boolean known() {
    return all().stream()
        .allMatch(
            one -> roster.channel(one.lower()) != null && roster.channel(one.upper()) != null);
  }

  /** Places in the list of those in which a channel is the lower one. */
  List<Integer> above(int channel) {
    return IntStream.range(0, all().size()).filter(i -> lower(i) == channel).boxed().toList();
  }

  /** Those of them at which phases can be predicted. */
  List<Integer> ofTheBass(int channel) {
    return above(channel).stream()
        .filter(i -> all().get(i).frequencyHz() <= q.incoherentAboveHz())
        .toList();
  }

  int lower(int crossover) {
    return roster.channel(all().get(crossover).lower());
  }

  int upper(int crossover) {
    return roster.channel(all().get(crossover).upper());
  }

  /**
   * Channels in an order in which each follows all it crosses over up to. Those that play below
   * themselves, in a circle of crossovers, are missing.
   */
  List<Integer> highestFirst() {
    List<Integer> order = new ArrayList<>();
    int before = -1;
    while (order.size() > before) {
      before = order.size();
      for (int channel = 0; channel < q.channels().size(); channel++) {
        boolean allAbovePlaced = above(channel).stream().allMatch(i -> order.contains(upper(i)));
        if (allAbovePlaced && !order.contains(channel)) {
          order.add(channel);
        }
      }
    }
    return order;
  }
}
