package org.footwell.vehicle.chain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import org.footwell.acoustic.alignment.LeastSpread;
import org.footwell.acoustic.alignment.Meeting;
import org.footwell.acoustic.alignment.PhaseMatch;
import org.footwell.physics.Phasor;

/**
 * Delays of all channels for the main seat: flight times first, then from the top down each lower
 * channel so that it adds with those above where they meet, below the frequency of incoherence.
 */
public final class Alignment {

  private final VehicleModel model;
  private final List<Crossing> crossings;
  private final double[] flightDelayMs;
  private final double[] delayMs;
  private final int[] turn;
  private final List<Matched> matched = new ArrayList<>();

  /**
   * One crossing of the bass.
   *
   * @param match what each polarity gives
   */
  public record Matched(Crossing crossing, PhaseMatch match) {}

  /**
   * Finds the delays.
   *
   * @param crossings in any order
   */
  public Alignment(
      VehicleModel model,
      List<Crossing> crossings,
      List<ChannelState> states,
      double incoherentAboveHz) {
    this.model = model;
    this.crossings =
        crossings.stream()
            .map(crossing -> crossing.upTo(incoherentAboveHz))
            .filter(crossing -> !crossing.ups().isEmpty())
            .sorted(Comparator.comparing(Crossing::highestHz).reversed())
            .toList();
    int count = model.channels().size();
    double[] weight = model.seatWeight();
    double[][] arrivals = new double[count][weight.length];
    for (int c = 0; c < count; c++) {
      for (int s = 0; s < weight.length; s++) {
        arrivals[c][s] =
            model.channels().get(c).chain().flightMs(s) + model.wanted().get(c).chainDelayMs();
      }
    }
    flightDelayMs = LeastSpread.delaysMs(arrivals, weight, () -> {});
    delayMs = flightDelayMs.clone();
    turn = new int[count];
    Arrays.fill(turn, 1);
    for (Crossing crossing : this.crossings) {
      match(crossing, states);
    }
    settle();
  }

  private void match(Crossing crossing, List<ChannelState> states) {
    int lower = crossing.lower();
    if (!heard(lower) || !crossing.ups().stream().allMatch(up -> heard(up.upper()))) {
      return;
    }
    List<ChannelState> delayed = delayed(states);
    List<Meeting> meetings = new ArrayList<>();
    for (int seat = 0; seat < model.seatWeight().length; seat++) {
      if (model.seatWeight()[seat] > 0) {
        for (List<Crossing.Up> ups : crossing.together()) {
          meetings.add(meeting(lower, ups, delayed, seat));
        }
      }
    }
    PhaseMatch match = PhaseMatch.of(meetings);
    boolean turned = match.inversionAdvised();
    delayMs[crossing.lower()] += (turned ? match.inverted() : match.asGiven()).delayMs();
    turn[crossing.lower()] = turned ? -1 : 1;
    matched.add(new Matched(crossing, match));
  }

  /** The channels with the delays and turns found so far. */
  private List<ChannelState> delayed(List<ChannelState> states) {
    List<ChannelState> delayed = new ArrayList<>();
    for (int c = 0; c < turn.length; c++) {
      ChannelState state = states.get(c);
      double late = delayMs[c] + model.wanted().get(c).chainDelayMs();
      delayed.add(state.delayed(late, state.polarity() * turn[c]));
    }
    return delayed;
  }

  private Meeting meeting(int lower, List<Crossing.Up> ups, List<ChannelState> states, int seat) {
    return new Meeting(
        response(lower, states, seat),
        ups.stream().map(up -> response(up.upper(), states, seat)).toList(),
        ups.get(0).frequencyHz(),
        ups.stream().allMatch(up -> highPassed(up.upper())));
  }

  private boolean heard(int channel) {
    return model.channels().get(channel).chain().heard();
  }

  private boolean highPassed(int channel) {
    return model.channels().get(channel).chain().highPassed();
  }

  private DoubleFunction<Phasor> response(int c, List<ChannelState> states, int seat) {
    ChannelChain chain = model.channels().get(c).chain();
    ChannelState state = states.get(c);
    double size = state.trimmedV() * state.polarity();
    return f -> chain.soundAt(seat, f).times(Phasor.ofPolar(size, -0.36 * f * state.delayMs()));
  }

  /** Adds what roles want to be later, and makes the smallest delay 0. */
  private void settle() {
    double least = Double.POSITIVE_INFINITY;
    for (int c = 0; c < delayMs.length; c++) {
      delayMs[c] += model.wanted().get(c).delayMs();
      least = Math.min(least, delayMs[c]);
    }
    for (int c = 0; c < delayMs.length; c++) {
      delayMs[c] -= least;
    }
  }

  /** Delay to add to a channel, ms. */
  public double delayMs(int channel) {
    return delayMs[channel];
  }

  /** −1 where a channel adds better with its polarity turned, else 1. */
  public int turn(int channel) {
    return turn[channel];
  }

  /** Delay by its flight time alone, the smallest being 0, ms. */
  public double flightDelayMs(int channel) {
    return flightDelayMs[channel];
  }

  /**
   * Largest loss against all in phase at the crossings of the bass at a seat, dB, with channels as they
   * are set; NaN where there is none.
   */
  public double lossDb(int seat, List<ChannelState> states) {
    double most = Double.NaN;
    for (Matched one : matched) {
      for (List<Crossing.Up> ups : one.crossing().together()) {
        double loss = meeting(one.crossing().lower(), ups, states, seat).lossDb();
        most = Double.isNaN(most) ? loss : Math.min(most, loss);
      }
    }
    return most;
  }

  /** What was found at each crossing of the bass. */
  public List<Matched> matched() {
    return matched;
  }
}
