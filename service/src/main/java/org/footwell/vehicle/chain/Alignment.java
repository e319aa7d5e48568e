package org.footwell.vehicle.chain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
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
  private final double incoherentAboveHz;
  private final double[] flightMs;
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
            .sorted((a, b) -> Double.compare(b.frequencyHz(), a.frequencyHz()))
            .toList();
    this.incoherentAboveHz = incoherentAboveHz;
    int count = model.channels().size();
    flightMs = new double[count];
    delayMs = new double[count];
    turn = new int[count];
    Arrays.fill(turn, 1);
    double last = 0;
    for (int c = 0; c < count; c++) {
      flightMs[c] = model.channels().get(c).chain().flightMs(model.mainSeat());
      last = Math.max(last, arrival(c));
    }
    for (int c = 0; c < count; c++) {
      delayMs[c] = last - arrival(c);
    }
    for (Crossing crossing : this.crossings) {
      match(crossing, states);
    }
    settle();
  }

  private double arrival(int c) {
    return flightMs[c] + model.wanted().get(c).chainDelayMs();
  }

  private void match(Crossing crossing, List<ChannelState> states) {
    if (crossing.frequencyHz() > incoherentAboveHz
        || !model.channels().get(crossing.lower()).chain().heard()
        || !crossing.uppers().stream().allMatch(u -> model.channels().get(u).chain().heard())) {
      return;
    }
    List<DoubleFunction<Phasor>> uppers = new ArrayList<>();
    boolean pass = true;
    for (int upper : crossing.uppers()) {
      uppers.add(response(upper, states.get(upper)));
      pass &= model.channels().get(upper).chain().highPassed();
    }
    PhaseMatch match =
        PhaseMatch.of(
            List.of(
                new Meeting(
                    response(crossing.lower(), states.get(crossing.lower())),
                    uppers,
                    crossing.frequencyHz(),
                    pass)));
    boolean turned =
        match.inversionAdvised() && model.wanted().get(crossing.lower()).setPolarity() == null;
    delayMs[crossing.lower()] += (turned ? match.inverted() : match.asGiven()).delayMs();
    turn[crossing.lower()] = turned ? -1 : 1;
    matched.add(new Matched(crossing, match));
  }

  private DoubleFunction<Phasor> response(int c, ChannelState state) {
    ChannelChain chain = model.channels().get(c).chain();
    double late = delayMs[c] + model.wanted().get(c).chainDelayMs();
    double size = state.trimmedV() * state.polarity() * turn[c];
    return f -> chain.soundAt(model.mainSeat(), f).times(Phasor.ofPolar(size, -0.36 * f * late));
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
    double last = 0;
    for (int c = 0; c < flightMs.length; c++) {
      last = Math.max(last, arrival(c));
    }
    return last - arrival(channel);
  }

  /** What was found at each crossing of the bass. */
  public List<Matched> matched() {
    return matched;
  }
}
