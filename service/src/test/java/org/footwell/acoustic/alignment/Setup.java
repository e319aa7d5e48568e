package org.footwell.acoustic.alignment;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Channel;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Crossover;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Distance;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Processor;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Seat;
import org.footwell.acoustic.alignment.SeatDelaysRequest.SeatMicrophone;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.Position;

/** A request in the making. */
final class Setup {

  static final SeatDelays CALCULATION = new SeatDelays();

  final List<Channel> channels = new ArrayList<>();
  final List<Seat> seats = new ArrayList<>();
  final List<Distance> distances = new ArrayList<>();
  final List<Crossover> crossovers = new ArrayList<>();
  final List<MeasuredArrival> arrivals = new ArrayList<>();
  final List<SeatMicrophone> microphones = new ArrayList<>();
  Processor processor;
  Double temperatureC;

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
    channels.add(new Channel(name, position, null, null, null, true, null));
    return this;
  }

  /** Gives a channel filters and a polarity, keeping the rest. */
  Setup filters(int index, Filter high, Filter low, Integer polarity) {
    Channel was = channels.get(index);
    channels.set(
        index,
        new Channel(was.name(), was.position(), was.chainDelayMs(), high, low, false, polarity));
    return this;
  }

  Setup chain(int index, double ms) {
    Channel was = channels.get(index);
    channels.set(
        index,
        new Channel(
            was.name(),
            was.position(),
            ms,
            was.highPass(),
            was.lowPass(),
            was.fullRange(),
            was.polarity()));
    return this;
  }

  Setup seat(String name, Position position) {
    seats.add(new Seat(name, null, position, null, null));
    return this;
  }

  Setup weight(int index, double weight) {
    Seat was = seats.get(index);
    seats.set(index, new Seat(was.name(), weight, was.position(), was.leftEar(), was.rightEar()));
    return this;
  }

  Setup crossover(String lower, String upper, double hz) {
    crossovers.add(new Crossover(lower, upper, hz));
    return this;
  }

  Setup arrival(String channel, String microphone, double ms) {
    arrivals.add(entry(channel, microphone, ms, null, null, null));
    return this;
  }

  static MeasuredArrival entry(
      String channel,
      String microphone,
      double ms,
      MeasuredArrival.Method method,
      Integer polarity,
      Double confidence) {
    return MeasuredArrivalBuilder.builder()
        .channel(channel)
        .microphone(microphone)
        .arrivalMs(ms)
        .method(method)
        .polarity(polarity)
        .polarityConfidence(confidence)
        .build();
  }

  SeatDelaysRequest request() {
    return new SeatDelaysRequest(
        channels, seats, distances, crossovers, processor, temperatureC, arrivals, microphones);
  }

  Answer<SeatDelaysResult> answer() {
    return Answers.of(CALCULATION, request());
  }

  SeatDelaysResult result() {
    return answer().result();
  }

  double[] delays() {
    return result().channels().stream().mapToDouble(SeatDelaysResult.Channel::delayMs).toArray();
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
