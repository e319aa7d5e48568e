package org.footwell.acoustic.alignment;

import java.util.List;
import java.util.function.DoubleFunction;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;

/**
 * The delay of a lower channel with which it adds best to the channels above it, for both of its
 * polarities.
 *
 * <p>The loss at a frequency is 20·lg(|Σp|/Σ|p|), all channels as heard at a place. Of the delays
 * within half a period of the crossover either way, those are sought whose largest loss over the
 * frequencies judged is least; of those that lose hardly more, the one nearest to 0 is taken. The
 * band, the window and the two figures below are our own rule, no source.
 *
 * <p>No delays are tried. At each frequency the delays that lose at most so much are known in closed
 * form, as ranges; what is common to all frequencies shrinks to nothing as the loss allowed does, and
 * halving finds where. So the least loss is exact to rounding for the frequencies judged, and no
 * delay can be missed.
 *
 * @param asGiven with the polarity that the response of the lower channel has
 * @param inverted with the other one
 */
public record PhaseMatch(Setting asGiven, Setting inverted) {

  /** Losing this much more than the least is worth being nearer to flight time, dB. */
  static final double HARDLY_MORE_DB = 0.05;

  /** Losing this much less is worth turning the polarity, dB. */
  static final double WORTH_INVERTING_DB = 1;

  /** Nearer by less, or losing more by less, is the same: less than a sample of a processor. */
  private static final double SAME_MS = 0.01;

  private static final double SAME_DB = 1e-6;

  /** How near the least loss is brought, dB: at most 27 halvings of the largest. */
  private static final double PRECISION_DB = 1e-6;

  /** Beyond this part of the window the best delay is at its edge. */
  private static final double EDGE = 0.999;

  /**
   * What one polarity gives.
   *
   * @param delayMs by which the lower channel comes later than given; negative: earlier
   * @param lossDb its largest loss, dB, 0 or below and no less than −100
   * @param flightLossDb the largest loss without that delay, dB
   * @param atEdge whether the least loss is at an edge of the window, so that less may lie beyond
   */
  public record Setting(double delayMs, double lossDb, double flightLossDb, boolean atEdge) {}

  /**
   * At one place, of one crossover.
   *
   * @param lower complex response of the lower channel by frequency in Hz, with the way to the place
   *     and its flight-time delay in it
   * @param uppers those of the upper channels, with the delays they have
   * @param crossoverHz where they hand over, Hz
   * @param uppersHavePass whether every upper channel has a high-pass
   */
  public static PhaseMatch of(
      DoubleFunction<Phasor> lower,
      List<DoubleFunction<Phasor>> uppers,
      double crossoverHz,
      boolean uppersHavePass) {
    return of(List.of(new Meeting(lower, uppers, crossoverHz, uppersHavePass)));
  }

  /**
   * At several places or crossovers of one lower channel: the largest loss is that over all of them,
   * and the window that of the highest crossover.
   */
  public static PhaseMatch of(List<Meeting> meetings) {
    double highestHz = meetings.stream().mapToDouble(Meeting::crossoverHz).max().orElseThrow();
    double halfPeriodMs = halfPeriodMs(highestHz);
    List<BothSides> given = meetings.stream().flatMap(one -> one.judged().stream()).toList();
    List<BothSides> turned = given.stream().map(BothSides::inverted).toList();
    return new PhaseMatch(search(given, halfPeriodMs), search(turned, halfPeriodMs));
  }

  /** Half a period of a crossover, ms: how far a channel may be moved. */
  static double halfPeriodMs(double crossoverHz) {
    return 500 / crossoverHz;
  }

  /**
   * Whether the other polarity is better: it loses at least 1 dB less, or no more and lies nearer to
   * flight time.
   */
  public boolean inversionAdvised() {
    double gained = inverted.lossDb - asGiven.lossDb;
    boolean nearer = Math.abs(inverted.delayMs) < Math.abs(asGiven.delayMs) - SAME_MS;
    return gained >= WORTH_INVERTING_DB || (nearer && gained >= -SAME_DB);
  }

  private static Setting search(List<BothSides> judged, double halfPeriodMs) {
    DelayRanges window = DelayRanges.upTo(halfPeriodMs);
    double flight = largestLossDb(judged, 0);
    double tooLittle = 0;
    double enough = flight;
    while (tooLittle - enough > PRECISION_DB) {
      double between = (tooLittle + enough) / 2;
      if (within(between, judged, window).none()) {
        tooLittle = between;
      } else {
        enough = between;
      }
    }
    double least = within(enough, judged, window).nearestToNone();
    double nearest = within(enough - HARDLY_MORE_DB, judged, window).nearestToNone();
    return new Setting(
        nearest, largestLossDb(judged, nearest), flight, Math.abs(least) > EDGE * halfPeriodMs);
  }

  /** Delays of the window with which nothing judged loses more than this, dB. */
  private static DelayRanges within(double lossDb, List<BothSides> judged, DelayRanges window) {
    double power = Decibels.toPower(lossDb);
    DelayRanges left = window;
    for (BothSides both : judged) {
      if (left.none()) {
        return left;
      }
      left = both.leaving(power, left);
    }
    return left;
  }

  private static double largestLossDb(List<BothSides> judged, double delayMs) {
    return judged.stream().mapToDouble(both -> both.lossDb(delayMs)).min().orElse(0);
  }
}
