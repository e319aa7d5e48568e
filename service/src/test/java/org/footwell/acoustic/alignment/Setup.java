package org.footwell.acoustic.alignment;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Distance;
import org.footwell.acoustic.alignment.SeatDelaysRequest.SeatMicrophone;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.Crossover;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.Position;
import org.footwell.parts.SeatBuilder;

/** A request in the making. */
final class Setup {

  static final SeatDelays CALCULATION = new SeatDelays();

  final List<SeatDelaysRequestPlacedChannelBuilder> channels = new ArrayList<>();
  final List<SeatBuilder> seats = new ArrayList<>();
  final List<Distance> distances = new ArrayList<>();
  final List<Crossover> crossovers = new ArrayList<>();
  final List<MeasuredArrivalBuilder> arrivals = new ArrayList<>();
  final List<SeatMicrophone> microphones = new ArrayList<>();
  final SeatDelaysRequestBuilder asked = SeatDelaysRequestBuilder.builder();

  /** Full-range channels c0, c1 … and seats s0, s1 … with measured distances, a row per channel. */
  static Setup tape(double[][] metres) {
    Setup setup = new Setup();
    for (int s = 0; s < metres[0].length; s++) {
      setup.seat("s" + s, null);
    }
    for (int c = 0; c < metres.length; c++) {
      setup.channel("c" + c, null);
      for (int s = 0; s < metres[c].length; s++) {
        setup.distances.add(new Distance("c" + c, "s" + s, metres[c][s]));
      }
    }
    return setup;
  }

  static Position at(double x, double y, double z) {
    return new Position(x, y, z);
  }

  static Filter filter(Kind kind, int order, double hz) {
    return new Filter(kind, order, hz, null);
  }

  static Filter lr4(double hz) {
    return filter(Kind.LINKWITZ_RILEY, 4, hz);
  }

  /** A channel that is certain to have no filter. */
  Setup channel(String name, Position position) {
    channels.add(
        SeatDelaysRequestPlacedChannelBuilder.builder()
            .name(name)
            .position(position)
            .fullRange(true));
    return this;
  }

  /** Gives a channel filters and a polarity, keeping the rest. */
  Setup filters(int index, Filter high, Filter low, Integer polarity) {
    channels.get(index).highPass(high).lowPass(low).fullRange(false).polarity(polarity);
    return this;
  }

  Setup chain(int index, double ms) {
    channels.get(index).chainDelayMs(ms);
    return this;
  }

  Setup seat(String name, Position position) {
    seats.add(SeatBuilder.builder().name(name).position(position));
    return this;
  }

  Setup weight(int index, double weight) {
    seats.get(index).weight(weight);
    return this;
  }

  Setup crossover(String lower, String upper, double hz) {
    crossovers.add(new Crossover(lower, upper, hz));
    return this;
  }

  Setup arrival(String channel, String microphone, double ms) {
    arrivals.add(
        MeasuredArrivalBuilder.builder().channel(channel).microphone(microphone).arrivalMs(ms));
    return this;
  }

  SeatDelaysRequest request() {
    return asked
        .channels(channels.stream().map(SeatDelaysRequestPlacedChannelBuilder::build).toList())
        .seats(seats.stream().map(SeatBuilder::build).toList())
        .distances(distances)
        .crossovers(crossovers)
        .arrivals(arrivals.stream().map(MeasuredArrivalBuilder::build).toList())
        .microphones(microphones)
        .build();
  }

  Answer<SeatDelaysResult> answer() {
    return Answers.of(CALCULATION, request());
  }

  SeatDelaysResult result() {
    return answer().result();
  }

  double[] delays() {
    return result().channels().stream()
        .mapToDouble(SeatDelaysResult.ChannelDelay::delayMs)
        .toArray();
  }

  List<String> codes() {
    return Answers.codes(answer());
  }

  /** Faults as "code at pointer". */
  List<String> faults() {
    return Answers.faults(CALCULATION, request()).stream().map(Setup::shown).toList();
  }

  private static String shown(Fault fault) {
    return fault.code() + " at " + fault.pointer();
  }
}
