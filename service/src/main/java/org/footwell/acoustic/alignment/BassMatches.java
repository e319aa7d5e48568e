package org.footwell.acoustic.alignment;

import static org.footwell.calculation.Source.COMMON_PRACTICE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.physics.Phasor;

/**
 * Lower channels at crossovers of the bass, where phases can be predicted, each moved from its flight
 * time so that it adds to the channels above it at the main seat. From the top down: what is above
 * stays where it was put.
 */
final class BassMatches {

  private final SeatDelaysRequest q;
  private final Crossovers crossovers;
  private final List<HeardChannel> channels;
  private final Layout layout;
  private final Run run;
  private final int mainSeat;

  /** When each channel is heard at each point with the delays of flight time, ms. */
  private final double[][] flightMs;

  private final PhaseMatch[] matches;

  BassMatches(SeatDelaysRequest q, Layout layout, double[][] flightMs, Run run) {
    this.q = q;
    this.crossovers = new Crossovers(q);
    this.channels = q.channels().stream().map(HeardChannel::new).toList();
    this.layout = layout;
    this.flightMs = flightMs;
    this.run = run;
    this.mainSeat = mainSeat(q);
    this.matches = new PhaseMatch[channels.size()];
    for (int lower : crossovers.highestFirst()) {
      match(lower);
    }
  }

  /** The seat that counts most; of several the first. */
  private static int mainSeat(SeatDelaysRequest q) {
    int main = 0;
    for (int s = 1; s < q.seats().size(); s++) {
      main = q.seats().get(s).weight() > q.seats().get(main).weight() ? s : main;
    }
    return main;
  }

  /** By how much each channel comes later than its flight time, ms; negative: earlier. */
  double[] movedMs() {
    return Arrays.stream(matches)
        .mapToDouble(match -> match == null ? 0 : match.asGiven().delayMs())
        .toArray();
  }

  /** The match of a channel, or null if it is the lower one of no crossover of the bass. */
  PhaseMatch of(int channel) {
    return matches[channel];
  }

  /**
   * Whether nothing is left to say of the polarities of a crossover: the lower channel should be
   * inverted, or meets no other channel, so that both its polarities were tried with this one.
   */
  boolean settlesPolarityOf(int crossover) {
    int lower = crossovers.lower(crossover);
    List<Integer> met = crossovers.ofTheBass(lower);
    return met.contains(crossover) && (met.size() == 1 || matches[lower].inversionAdvised());
  }

  List<SeatDelaysResult.Match> results() {
    return IntStream.range(0, matches.length)
        .filter(lower -> matches[lower] != null)
        .mapToObj(
            lower ->
                new SeatDelaysResult.Match(
                    q.channels().get(lower).name(),
                    crossovers.ofTheBass(lower).stream()
                        .map(i -> crossovers.all().get(i))
                        .map(one -> new SeatDelaysResult.Upper(one.upper(), one.frequencyHz()))
                        .toList(),
                    q.seats().get(mainSeat).name(),
                    result(matches[lower].asGiven()),
                    result(matches[lower].inverted()),
                    matches[lower].inversionAdvised()))
        .toList();
  }

  private static SeatDelaysResult.MatchedSum result(PhaseMatch.Setting setting) {
    return new SeatDelaysResult.MatchedSum(
        setting.delayMs(), setting.lossDb(), setting.flightLossDb(), setting.atEdge());
  }

  private void match(int lower) {
    List<Integer> above = crossovers.ofTheBass(lower);
    if (above.isEmpty()) {
      return;
    }
    run.checkDeadline();
    Map<Double, List<Integer>> uppers = new TreeMap<>();
    for (int i : above) {
      double frequency = crossovers.all().get(i).frequencyHz();
      uppers.computeIfAbsent(frequency, f -> new ArrayList<>()).add(crossovers.upper(i));
    }
    List<Meeting> meetings = new ArrayList<>();
    for (int point = 0; point < layout.points(); point++) {
      if (layout.seat[point] == mainSeat) {
        for (Map.Entry<Double, List<Integer>> group : uppers.entrySet()) {
          meetings.add(meeting(lower, group.getValue(), group.getKey(), point));
        }
      }
    }
    PhaseMatch match = PhaseMatch.of(meetings);
    matches[lower] = match;
    explain(match, uppers.keySet().stream().mapToDouble(f -> f).max().orElseThrow());
  }

  private Meeting meeting(int lower, List<Integer> uppers, double frequency, int point) {
    return new Meeting(
        heard(lower, point),
        uppers.stream().map(upper -> heard(upper, point)).toList(),
        frequency,
        uppers.stream().allMatch(upper -> channels.get(upper).hasHighPass()));
  }

  private DoubleFunction<Phasor> heard(int channel, int point) {
    double moved = matches[channel] == null ? 0 : matches[channel].asGiven().delayMs();
    double late = flightMs[channel][point] + moved;
    return f -> channels.get(channel).at(f, late);
  }

  /** The search as steps of the workings, by its highest crossover. */
  private void explain(PhaseMatch match, double highestHz) {
    run.apply(
        Formula.of(
                "moved_ms",
                "the τ within ±500/f whose largest loss is least, within 0.05 dB the nearest to 0",
                "ms",
                COMMON_PRACTICE)
            .with("f", f -> match.asGiven().delayMs()),
        highestHz);
    run.apply(
        Formula.of(
                "largest_loss_db",
                "20·lg(|Σp|/Σ|p|) where it is lowest within half an octave of the crossover",
                "dB",
                COMMON_PRACTICE)
            .with("τ", delay -> match.asGiven().lossDb()),
        match.asGiven().delayMs());
  }
}
