package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFault.CROSSOVER_CIRCLE;
import static org.footwell.acoustic.alignment.AlignmentFault.CROSSOVER_WITH_ITSELF;
import static org.footwell.acoustic.alignment.AlignmentFault.DISTANCE_MISSING;
import static org.footwell.acoustic.alignment.AlignmentFault.HIGH_PASS_ABOVE_LOW_PASS;
import static org.footwell.acoustic.alignment.AlignmentFault.POSITION_BESIDE_DISTANCES;
import static org.footwell.acoustic.alignment.AlignmentFault.POSITION_MISSING;
import static org.footwell.calculation.CoreFault.DANGLING_REFERENCE;
import static org.footwell.calculation.CoreFault.DUPLICATE;
import static org.footwell.calculation.CoreFault.NOT_ALLOWED;
import static org.footwell.calculation.CoreFault.REQUIRED;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Crossover;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Distance;
import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Seat;
import org.footwell.calculation.Names;
import org.footwell.calculation.Run;
import org.footwell.parts.Filter;
import org.footwell.parts.Position;

/** The rules between the fields of a request; every breach is refused, all at once. */
final class RequestCheck {

  private final SeatDelaysRequest q;
  private final Run run;
  private final Roster roster;

  private RequestCheck(SeatDelaysRequest q, Run run) {
    this.q = q;
    this.run = run;
    this.roster = new Roster(q);
  }

  /** Ends the run if anything is amiss. */
  static void require(SeatDelaysRequest q, Run run) {
    RequestCheck check = new RequestCheck(q, run);
    check.unique("/channels/", q.channels().stream().map(PlacedChannel::name).toList());
    check.unique("/seats/", q.seats().stream().map(Seat::name).toList());
    check.channels();
    boolean taped = !Roster.orNone(q.distances()).isEmpty();
    boolean heard = !Roster.orNone(q.arrivals()).isEmpty();
    if (heard) {
      check.arrivalsEverywhere(taped);
    } else if (taped) {
      check.distancesEverywhere();
    } else {
      check.positionsEverywhere();
    }
    if (!heard && !Roster.orNone(q.microphones()).isEmpty()) {
      run.refuse(NOT_ALLOWED)
          .at("/microphones")
          .given(q.microphones().size() + " entries")
          .allowed("left out without arrivals");
    }
    check.crossovers();
    run.requireNoFaults();
  }

  private void unique(String list, List<String> all) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < all.size(); i++) {
      if (!seen.add(all.get(i))) {
        run.refuse(DUPLICATE).at(list + i + "/name").given(all.get(i));
      }
    }
  }

  private void channels() {
    for (int i = 0; i < q.channels().size(); i++) {
      String at = "/channels/" + i;
      PlacedChannel channel = q.channels().get(i);
      Filter high = channel.highPass();
      Filter low = channel.lowPass();
      Filter.require(high, at + "/high_pass", run);
      Filter.require(low, at + "/low_pass", run);
      if (high != null && low != null && high.frequencyHz() > low.frequencyHz()) {
        run.refuse(HIGH_PASS_ABOVE_LOW_PASS)
            .at(at + "/high_pass/frequency_hz")
            .given(high.frequencyHz())
            .allowed("at most " + low.frequencyHz());
      }
      if (channel.fullRange() && (high != null || low != null)) {
        run.refuse(NOT_ALLOWED)
            .at(at + "/full_range")
            .given(true)
            .allowed("false when filters are given");
      }
      if (channel.polarity() == 0) {
        run.refuse(NOT_ALLOWED).at(at + "/polarity").given(0).allowed("1 or -1");
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
      Seat seat = q.seats().get(i);
      String at = "/seats/" + i;
      if (seat.leftEar() == null && seat.rightEar() == null) {
        if (seat.position() == null) {
          run.refuse(POSITION_MISSING).at(at + "/position");
        }
        continue;
      }
      Map<String, Position> either = new LinkedHashMap<>();
      either.put("position", seat.position());
      either.put("both ears", seat.leftEar() == null ? seat.rightEar() : seat.leftEar());
      run.exactlyOneOf(at, either);
      if (seat.leftEar() == null) {
        run.refuse(REQUIRED).at(at + "/left_ear").allowed("left_ear and right_ear together");
      }
      if (seat.rightEar() == null) {
        run.refuse(REQUIRED).at(at + "/right_ear").allowed("left_ear and right_ear together");
      }
    }
  }

  private void arrivalsEverywhere(boolean taped) {
    noPositions();
    if (taped) {
      run.refuse(NOT_ALLOWED)
          .at("/distances")
          .given(q.distances().size() + " entries")
          .allowed("left out when arrivals are given");
    }
    new Arrivals(q).check(run);
  }

  private void noPositions() {
    for (int i = 0; i < q.channels().size(); i++) {
      none(q.channels().get(i).position(), "/channels/" + i + "/position");
    }
    for (int i = 0; i < q.seats().size(); i++) {
      Seat seat = q.seats().get(i);
      none(seat.position(), "/seats/" + i + "/position");
      none(seat.leftEar(), "/seats/" + i + "/left_ear");
      none(seat.rightEar(), "/seats/" + i + "/right_ear");
    }
  }

  private void distancesEverywhere() {
    noPositions();
    Set<String> measured = new HashSet<>();
    for (int i = 0; i < q.distances().size(); i++) {
      Distance distance = q.distances().get(i);
      String at = "/distances/" + i;
      channel(distance.channel(), at + "/channel");
      known(distance.seat(), roster.seatNames(), at + "/seat", "seats");
      if (!measured.add(pair(distance.channel(), distance.seat()))) {
        run.refuse(DUPLICATE).at(at).given(pair(distance.channel(), distance.seat()));
      }
    }
    for (PlacedChannel channel : q.channels()) {
      for (Seat seat : q.seats()) {
        if (!measured.contains(pair(channel.name(), seat.name()))) {
          run.refuse(DISTANCE_MISSING).at("/distances").given(pair(channel.name(), seat.name()));
        }
      }
    }
  }

  private void none(Position position, String at) {
    if (position != null) {
      run.refuse(POSITION_BESIDE_DISTANCES).at(at);
    }
  }

  private boolean channel(String name, String at) {
    return known(name, roster.channelNames(), at, "channels");
  }

  private boolean known(String name, Set<String> names, String at, String list) {
    if (names.contains(name)) {
      return true;
    }
    run.refuse(DANGLING_REFERENCE)
        .at(at)
        .given(name)
        .allowed(list)
        .with("nearest", Names.didYouMean(name, names));
    return false;
  }

  private static String pair(String from, String to) {
    return from + " to " + to;
  }

  private void crossovers() {
    List<Crossover> crossovers = Roster.orNone(q.crossovers());
    boolean sound = true;
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < crossovers.size(); i++) {
      Crossover crossover = crossovers.get(i);
      String at = "/crossovers/" + i;
      sound &= channel(crossover.lower(), at + "/lower");
      sound &= channel(crossover.upper(), at + "/upper");
      if (crossover.lower().equals(crossover.upper())) {
        run.refuse(CROSSOVER_WITH_ITSELF).at(at).given(crossover.lower());
        sound = false;
      }
      if (!seen.add(pair(crossover.lower(), crossover.upper()))) {
        run.refuse(DUPLICATE).at(at).given(pair(crossover.lower(), crossover.upper()));
      }
    }
    if (sound) {
      List<Integer> order = FilterDelays.highestFirst(q, roster);
      for (int i = 0; i < crossovers.size(); i++) {
        if (!order.contains(roster.channel(crossovers.get(i).lower()))) {
          run.refuse(CROSSOVER_CIRCLE).at("/crossovers/" + i).given(crossovers.get(i).lower());
        }
      }
    }
  }
}
