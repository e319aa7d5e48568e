package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.parts.LevelAt;
import org.footwell.parts.plan.MeasuredChannel;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.SoundField;

/**
 * How far all that was measured is from what a model predicts, each figure over its usual uncertainty.
 *
 * @param own the figures of each entry of {@code measured} that are its own
 * @param arrival its arrival against all others, where it has one
 */
record Misfit(List<List<Double>> own, List<List<Double>> arrival) {

  /** Usual uncertainty of a level in a cabin, dB; this and those below: common practice, no source. */
  private static final double LEVEL_DB = 1.5;

  /** Of a point of a response, its mean taken off, dB. */
  private static final double RESPONSE_DB = 2;

  /** Of a meter with its leads, as a ratio. */
  private static final double METER = 0.1;

  /** Of an arrival, ms. */
  private static final double ARRIVAL_MS = 0.3;

  /** What a wrong polarity counts: it is rarely mistaken. */
  private static final double POLARITY = 3;

  /** What lies this far below the strongest of a response is noise, dB. */
  private static final double NOISE_DB = 30;

  /** Nothing to be heard, Pa²: its logarithm is still a number. */
  private static final double LEAST_SQUARE = 1e-30;

  /** Of the plan as it is. */
  static Misfit of(Modelled base) {
    return new Misfit(List.of(), List.of())
        .changed(
            base,
            base.model().channels(),
            base.heard(),
            IntStream.range(0, base.heard().size()).boxed().toList());
  }

  /** The same with some channels changed. */
  Misfit changed(
      Modelled base,
      List<PlayedChannel> channels,
      List<ChannelState> states,
      List<Integer> changed) {
    List<MeasuredChannel> measured = base.index().plan().measured();
    SoundField field = Modelled.field(channels, base.grid());
    int seat = base.index().plan().mainSeat();
    List<List<Double>> figures = new ArrayList<>();
    for (int row = 0; row < measured.size(); row++) {
      MeasuredChannel one = measured.get(row);
      int c = base.index().channel(one.channel());
      if (!changed.contains(c)) {
        figures.add(own.get(row));
        continue;
      }
      ChannelChain chain = channels.get(c).chain();
      List<Double> found = new ArrayList<>();
      if (one.levelDbSpl() != null && chain.heard()) {
        double predicted = field.alone(seat, states, c).dbSpl();
        found.add((one.levelDbSpl() - predicted) / LEVEL_DB);
      }
      if (one.response() != null && chain.heard()) {
        found.addAll(shape(one.response(), chain, seat));
      }
      if (one.meterOhm() != null && chain.meterOhm() != null) {
        found.add((one.meterOhm() / chain.meterOhm() - 1) / METER);
      }
      if (one.polarity() != null) {
        found.add(one.polarity() == states.get(c).polarity() ? 0.0 : POLARITY);
      }
      figures.add(found);
    }
    return new Misfit(figures, arrivals(base, channels, states));
  }

  private static List<Double> shape(List<LevelAt> response, ChannelChain chain, int seat) {
    double strongest = response.stream().mapToDouble(LevelAt::levelDb).max().orElseThrow();
    List<Double> off =
        response.stream()
            .filter(point -> point.levelDb() >= strongest - NOISE_DB)
            .map(
                point ->
                    point.levelDb()
                        - Decibels.ofPower(
                            Math.max(LEAST_SQUARE, square(chain, seat, point.frequencyHz()))))
            .toList();
    return centred(off, RESPONSE_DB);
  }

  private static double square(ChannelChain chain, int seat, double f) {
    return chain.squareAt(seat, f, f <= Modelled.INCOHERENT_ABOVE_HZ);
  }

  /** Channels moved for their phase do not arrive with the others and are left out. */
  private static List<List<Double>> arrivals(
      Modelled base, List<PlayedChannel> channels, List<ChannelState> states) {
    List<MeasuredChannel> measured = base.index().plan().measured();
    List<Integer> rows = new ArrayList<>();
    List<Double> off = new ArrayList<>();
    for (int row = 0; row < measured.size(); row++) {
      int c = base.index().channel(measured.get(row).channel());
      if (measured.get(row).arrivalMs() != null && !base.movedForPhase(c)) {
        double flight = channels.get(c).chain().flightMs(base.index().plan().mainSeat());
        rows.add(row);
        off.add(measured.get(row).arrivalMs() - flight - states.get(c).delayMs());
      }
    }
    List<Double> centred = centred(off, ARRIVAL_MS);
    return IntStream.range(0, measured.size())
        .mapToObj(row -> rows.contains(row) ? List.of(centred.get(rows.indexOf(row))) : none())
        .toList();
  }

  private static List<Double> none() {
    return List.of();
  }

  /** What is left once their mean is off, over an uncertainty. */
  private static List<Double> centred(List<Double> all, double uncertainty) {
    double mean = all.stream().mapToDouble(d -> d).average().orElse(0);
    return all.stream().map(one -> (one - mean) / uncertainty).toList();
  }

  private DoubleStream figures(int row) {
    return Stream.concat(own.get(row).stream(), arrival.get(row).stream()).mapToDouble(d -> d);
  }

  /** Sum of squares of one entry. */
  double squares(int row) {
    return figures(row).map(d -> d * d).sum();
  }

  /** The largest of one entry, without its sign. */
  double worst(int row) {
    return figures(row).map(Math::abs).max().orElse(0);
  }

  /** Whether something was measured that another model can predict and this one cannot. */
  boolean lacks(Misfit other) {
    return IntStream.range(0, own.size())
        .anyMatch(row -> own.get(row).size() < other.own.get(row).size());
  }

  /**
   * RMS over all figures.
   *
   * @param fitted figures of the model that were fitted to what was measured: each counts as one more
   *     that is off by its uncertainty, or else a fit would always be the best explanation
   */
  double rms(int fitted) {
    double sum = fitted;
    int count = 0;
    for (int row = 0; row < own.size(); row++) {
      sum += squares(row);
      count += own.get(row).size() + arrival.get(row).size();
    }
    return count == 0 ? 0 : Math.sqrt(sum / count);
  }
}
