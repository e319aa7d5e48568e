package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFault.CROSSOVER_CIRCLE;
import static org.footwell.acoustic.alignment.AlignmentFault.CROSSOVER_WITH_ITSELF;
import static org.footwell.acoustic.alignment.AlignmentFault.DISTANCE_MISSING;
import static org.footwell.acoustic.alignment.AlignmentFault.POSITION_MISSING;
import static org.footwell.calculation.CoreFault.NOT_ALLOWED;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Given;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.Crossover;
import org.footwell.parts.Filter;
import org.footwell.parts.Seat;

/** What a request must keep to beyond its declared rules; every breach is refused, all at once. */
final class RequestCheck {

  private final SeatDelaysRequest q;
  private final Run run;

  private RequestCheck(SeatDelaysRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  /** Ends the run if anything is amiss. */
  static void require(SeatDelaysRequest q, Run run) {
    RequestCheck check = new RequestCheck(q, run);
    check.channels();
    if (q.arrivals() != null) {
      new Arrivals(q).check(run);
    } else if (q.distances() != null) {
      check.distancesEverywhere();
    } else {
      check.positionsEverywhere();
    }
    check.crossovers();
    run.requireNoFaults();
  }

  private void channels() {
    for (int i = 0; i < q.channels().size(); i++) {
      String at = "/channels/" + i;
      PlacedChannel channel = q.channels().get(i);
      Filter high = channel.highPass();
      Filter low = channel.lowPass();
      Filter.require(high, at + "/high_pass", run);
      Filter.require(low, at + "/low_pass", run);
      if (channel.fullRange() && (high != null || low != null)) {
        run.refuse(NOT_ALLOWED)
            .at(at + "/full_range")
            .given(true)
            .allowed(Phrase.of(AlignmentWords.FALSE_WITH_FILTERS));
      }
    }
  }

  private void positionsEverywhere() {
    for (int i = 0; i < q.channels().size(); i++) {
      if (q.channels().get(i).position() == null) {
        run.refuse(POSITION_MISSING).at("/channels/" + i + "/position");
      }
    }
    for (int i = 0; i < q.seats().size(); i++) {
      if (q.seats().get(i).head() == null) {
        run.refuse(POSITION_MISSING).at("/seats/" + i + "/position");
      }
    }
  }

  private void distancesEverywhere() {
    Set<List<String>> measured = new HashSet<>();
    q.distances().forEach(tape -> measured.add(List.of(tape.channel(), tape.seat())));
    for (PlacedChannel channel : q.channels()) {
      for (Seat seat : q.seats()) {
        if (!measured.contains(List.of(channel.name(), seat.name()))) {
          run.refuse(DISTANCE_MISSING)
              .at("/distances")
              .given(Given.fromTo(channel.name(), seat.name()));
        }
      }
    }
  }

  private void crossovers() {
    Crossovers handing = new Crossovers(q);
    List<Crossover> crossovers = handing.all();
    boolean sound = true;
    for (int i = 0; i < crossovers.size(); i++) {
      Crossover crossover = crossovers.get(i);
      if (crossover.lower().equals(crossover.upper())) {
        run.refuse(CROSSOVER_WITH_ITSELF).at("/crossovers/" + i).given(crossover.lower());
        sound = false;
      }
    }
    if (sound) {
      List<Integer> order = handing.highestFirst();
      for (int i = 0; i < crossovers.size(); i++) {
        if (!order.contains(handing.lower(i))) {
          run.refuse(CROSSOVER_CIRCLE).at("/crossovers/" + i).given(crossovers.get(i).lower());
        }
      }
    }
  }
}
