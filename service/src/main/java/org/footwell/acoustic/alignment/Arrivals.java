package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFault.ARRIVAL_MISSING;
import static org.footwell.acoustic.alignment.AlignmentFinding.ARRIVAL_HOLDS_FILTERS;
import static org.footwell.acoustic.alignment.AlignmentFinding.MEASURED_POLARITY_DIFFERS;
import static org.footwell.calculation.CoreFault.DANGLING_REFERENCE;
import static org.footwell.calculation.Source.DEFINITION;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.acoustic.alignment.SeatDelaysRequest.SeatMicrophone;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Given;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;

/** Measured arrivals: which of them belong to a seat, and what a seat hears of each channel. */
final class Arrivals {

  private static final Formula.Of2 MEAN =
      Formula.of("arrival_ms", "Σ(w·t)/Σw", "ms", DEFINITION)
          .with("Σ(w·t)", "Σw", (sum, weights) -> sum / weights);

  private final SeatDelaysRequest q;
  private final Roster roster;
  private final Map<String, SeatMicrophone> microphones = new LinkedHashMap<>();

  Arrivals(SeatDelaysRequest q) {
    this.q = q;
    this.roster = new Roster(q);
    List<SeatMicrophone> given = Roster.orNone(q.microphones());
    given.forEach(one -> microphones.putIfAbsent(one.id(), one));
    if (given.isEmpty()) {
      boolean oneSeat = q.seats().size() == 1;
      for (MeasuredArrival arrival : q.arrivals()) {
        String id = arrival.microphone();
        String seat = oneSeat ? q.seats().get(0).name() : id;
        microphones.put(id, new SeatMicrophone(id, seat, null));
      }
    }
  }

  /** Refuses arrivals at nobody's place, and names those that are missing. */
  void check(Refusing to) {
    List<SeatMicrophone> given = Roster.orNone(q.microphones());
    Set<String> places =
        given.isEmpty()
            ? roster.seatNames()
            : given.stream().map(SeatMicrophone::id).collect(Collectors.toSet());
    Set<List<String>> seen = new HashSet<>();
    for (int i = 0; i < q.arrivals().size(); i++) {
      MeasuredArrival arrival = q.arrivals().get(i);
      if (!given.isEmpty() || q.seats().size() > 1) {
        String list = given.isEmpty() ? "seats" : "microphones";
        known(arrival.microphone(), places, "/arrivals/" + i + "/microphone", list, to);
      }
      seen.add(List.of(arrival.channel(), arrival.microphone()));
    }
    for (PlacedChannel channel : q.channels()) {
      microphones.values().stream()
          .filter(one -> roster.seat(one.seat()) != null)
          .filter(one -> !seen.contains(List.of(channel.name(), one.id())))
          .forEach(one -> missing(Given.at(channel.name(), one.id()), to));
    }
    for (String seat : roster.seatNames()) {
      if (microphones.values().stream().noneMatch(one -> one.seat().equals(seat))) {
        missing(Phrase.of(AlignmentWords.ANY_CHANNEL_AT).own("seat", seat), to);
      }
    }
  }

  private static void missing(Phrase what, Refusing to) {
    to.refuse(ARRIVAL_MISSING).at("/arrivals").given(what);
  }

  private static void known(String name, Set<String> names, String at, String list, Refusing to) {
    if (!names.contains(name)) {
      to.refuse(DANGLING_REFERENCE)
          .at(at)
          .given(name)
          .allowed(Allowed.fields(List.of(list)))
          .with("nearest", Names.didYouMean(name, names));
    }
  }

  /** What each seat hears of each channel, ms by channel and seat: the weighted mean. */
  double[][] bySeatMs(Run run) {
    double[][] sums = new double[q.channels().size()][q.seats().size()];
    double[][] weights = new double[q.channels().size()][q.seats().size()];
    for (MeasuredArrival arrival : q.arrivals()) {
      SeatMicrophone microphone = microphones.get(arrival.microphone());
      int channel = roster.channel(arrival.channel());
      int seat = roster.seat(microphone.seat());
      sums[channel][seat] += microphone.weight() * arrival.arrivalMs();
      weights[channel][seat] += microphone.weight();
    }
    for (int c = 0; c < sums.length; c++) {
      for (int s = 0; s < sums[c].length; s++) {
        sums[c][s] = run.apply(MEAN, sums[c][s], weights[c][s]);
      }
    }
    return sums;
  }

  /** Finds what contradicts the channels, once for each of them. */
  void remark(Run run) {
    Map<String, Integer> late = new HashMap<>();
    Map<String, Integer> turned = new HashMap<>();
    for (int i = 0; i < q.arrivals().size(); i++) {
      MeasuredArrival arrival = q.arrivals().get(i);
      PlacedChannel channel = q.channels().get(roster.channel(arrival.channel()));
      boolean filtered = channel.highPass() != null || channel.lowPass() != null;
      if (arrival.method() == MeasuredArrival.Method.ENVELOPE
          && filtered
          && late.putIfAbsent(channel.name(), i) == null) {
        run.find(ARRIVAL_HOLDS_FILTERS).at("/arrivals/" + i).own("name", channel.name());
      }
      if (arrival.contradicts(channel.polarity())
          && turned.putIfAbsent(channel.name(), i) == null) {
        run.find(MEASURED_POLARITY_DIFFERS)
            .at("/arrivals/" + i + "/polarity")
            .value(arrival.polarity())
            .limit(channel.polarity())
            .own("name", channel.name())
            .own("microphone", arrival.microphone());
      }
    }
  }
}
