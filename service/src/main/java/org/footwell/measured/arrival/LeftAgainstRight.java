package org.footwell.measured.arrival;

import static org.footwell.measured.arrival.ArrivalFinding.PAIR_AGAINST_EACH_OTHER;
import static org.footwell.measured.arrival.ArrivalFinding.PAIR_UNSURE;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.measured.arrival.ArrivalTimesRequest.RecordedChannel;
import org.footwell.measured.arrival.ListeningPosition.Heard;
import org.footwell.measured.response.LeftAndRight;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.physics.CabinGain;
import org.footwell.signal.GatedSpectrum;
import org.footwell.signal.PassBand;

/**
 * Whether left and right play with each other, by the sign of Re ΣHl·conj(Hr) below the lowest mode of
 * the cabin. There the pressure of alike loudspeakers equally far from its front has one sign
 * wherever they sit across it; above, modes of either sign make it a matter of place. The sum runs
 * over the bins of the band and, weighted, over the microphone positions; over the root of both
 * powers it is 1 for equal responses, −1 for opposite ones, 0 for unrelated ones.
 */
final class LeftAgainstRight {

  static final Source OWN_RULE =
      Source.of("Sign of Re ΣHl·conj(Hr) below c/2L: own rule, measured on made-up cabins");

  /** Nothing is looked for below, Hz. */
  private static final double LOWEST_HZ = 20;

  private static final Formula.Of1 HIGHEST_HZ =
      Formula.of("high_hz", "0.8·fc", "Hz", OWN_RULE).with("fc", corner -> 0.8 * corner);

  private static final Formula.Of3 LIKENESS =
      Formula.of("likeness", "Re Σ(Hl·conj(Hr))/√(Σ|Hl|²·Σ|Hr|²)", "", OWN_RULE)
          .with(
              "Re Σ(Hl·conj(Hr))",
              "Σ|Hl|²",
              "Σ|Hr|²",
              (product, left, right) -> product / Math.sqrt(left * right));

  /** From this likeness on the sign is told; measured, see the method page. */
  private static final double SURE = 0.8;

  /** What is looked at around the strongest sample: three periods of 20 Hz before, a decay after, s. */
  private static final double BEFORE_S = 0.15;

  private static final double AFTER_S = 0.3;

  private final ArrivalTimesRequest q;
  private final Responses responses;
  private final List<Heard> heard;
  private final Run run;
  private final double highHz;

  private LeftAgainstRight(
      ArrivalTimesRequest q, Responses responses, List<Heard> heard, double speed, Run run) {
    this.q = q;
    this.responses = responses;
    this.heard = heard;
    this.run = run;
    this.highHz = run.apply(HIGHEST_HZ, run.apply(CabinGain.CORNER, speed, q.cabinLengthM()));
  }

  /** One result a pair; recordings and what was heard in them are in the same order. */
  static List<ArrivalTimesResult.Pair> of(
      ArrivalTimesRequest q, Responses responses, List<Heard> heard, double speed, Run run) {
    LeftAgainstRight all = new LeftAgainstRight(q, responses, heard, speed, run);
    List<ArrivalTimesResult.Pair> results = new ArrayList<>();
    for (int i = 0; i < q.pairs().size(); i++) {
      results.add(all.pair(i));
    }
    return results;
  }

  private ArrivalTimesResult.Pair pair(int index) {
    run.checkDeadline();
    LeftAndRight pair = q.pairs().get(index);
    Sums sums = new Sums();
    for (MicrophonePosition microphone : q.microphones()) {
      sums.add(low(pair.left(), microphone), low(pair.right(), microphone), microphone.weight());
    }
    boolean empty = sums.left == 0 || sums.right == 0;
    double likeness = empty ? 0 : run.apply(LIKENESS, sums.product, sums.left, sums.right);
    double size = Math.abs(likeness) * sums.clear();
    int polarity = likeness < 0 ? -1 : 1;
    double lowHz = Math.min(sums.lowHz, highHz);
    if (size < SURE || polarity < 0) {
      run.find(size < SURE ? PAIR_UNSURE : PAIR_AGAINST_EACH_OTHER)
          .at("/pairs/" + index)
          .value(size)
          .limit(SURE)
          .own("left", pair.left())
          .own("right", pair.right())
          .with("to", highHz);
    }
    return new ArrivalTimesResult.Pair(pair.left(), pair.right(), polarity, size, lowHz, highHz);
  }

  private Low low(String id, MicrophonePosition microphone) {
    int take = 0;
    while (!heard.get(take).take().channel().equals(id)
        || !heard.get(take).take().microphone().equals(microphone.id())) {
      take++;
    }
    Heard one = heard.get(take);
    RecordedChannel channel =
        q.channels().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    double[] response = responses.of(one.take().recording());
    double rate = responses.rateHz();
    GatedSpectrum gated =
        GatedSpectrum.of(response, rate, GatedSpectrum.strongest(response), BEFORE_S, AFTER_S);
    double start = one.arrival().timeS() - one.arrivalMs() / 1000;
    double since = gated.startSample() / rate - start - channel.chainDelayMs() / 1000;
    return new Low(gated, since);
  }

  /** What one microphone heard of one channel, and from when on since the time reference, s. */
  private record Low(GatedSpectrum gated, double sinceS) {}

  /** Sums over bins and positions. */
  private final class Sums {
    private double product;
    private double left;
    private double right;
    private double leftNoise;
    private double rightNoise;
    private double lowHz = LOWEST_HZ;

    void add(Low l, Low r, double weight) {
      PassBand range = responses.range();
      double shortest = Math.min(l.gated().lengthS(), r.gated().lengthS());
      lowHz = Math.max(lowHz, Math.max(1 / shortest, range == null ? 0 : range.lowHz()));
      // Lengths differ where a recording ends early: bins of the coarser one, the other between.
      int size = Math.min(l.gated().spectrum().size(), r.gated().spectrum().size());
      int stepL = l.gated().spectrum().size() / size;
      int stepR = r.gated().spectrum().size() / size;
      double width = responses.rateHz() / size;
      for (int k = (int) Math.ceil(lowHz / width); k * width <= highHz; k++) {
        add(l, k * stepL, r, k * stepR, 2 * Math.PI * k * width, weight);
      }
    }

    private void add(Low l, int binL, Low r, int binR, double omega, double weight) {
      double re =
          l.gated().spectrum().re(binL) * r.gated().spectrum().re(binR)
              + l.gated().spectrum().im(binL) * r.gated().spectrum().im(binR);
      double im =
          l.gated().spectrum().im(binL) * r.gated().spectrum().re(binR)
              - l.gated().spectrum().re(binL) * r.gated().spectrum().im(binR);
      double turn = omega * (r.sinceS() - l.sinceS());
      product += weight * (re * Math.cos(turn) - im * Math.sin(turn));
      left += weight * l.gated().spectrum().power(binL);
      right += weight * r.gated().spectrum().power(binR);
      leftNoise += weight * l.gated().noise()[binL];
      rightNoise += weight * r.gated().noise()[binR];
    }

    /** 1 without noise, 0 where its amplitude is a quarter of the weaker sound's. */
    double clear() {
      double share = Math.max(leftNoise / left, rightNoise / right);
      return left == 0 || right == 0 ? 0 : Math.max(0, 1 - 4 * Math.sqrt(share));
    }
  }
}
