package org.footwell.measured.arrival;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.CabinGain;
import org.footwell.signal.GatedSpectrum;
import org.footwell.signal.PassBand;

/**
 * How alike left and right are, by the sign of Re ΣHl·conj(Hr) below the lowest mode of
 * the cabin. There the pressure of alike loudspeakers equally far from its front has one sign
 * wherever they sit across it; above, modes of either sign make it a matter of place. The sum runs
 * over the bins of the band and, weighted, over the microphone positions; over the root of both
 * powers it is 1 for equal responses, −1 for opposite ones, 0 for unrelated ones.
 */
final class Likeness {

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

  private final PassBand range;
  private final double rateHz;
  private final double highHz;

  private double product;
  private double left;
  private double right;
  private double leftNoise;
  private double rightNoise;
  private double lowHz = LOWEST_HZ;

  /**
   * Of a pair of which nothing is added yet.
   *
   * @param range the responses are limited to, or null
   * @param highHz end of the band
   */
  Likeness(PassBand range, double rateHz, double highHz) {
    this.range = range;
    this.rateHz = rateHz;
    this.highHz = highHz;
  }

  /** End of the band in a cabin of a length in m, Hz. */
  static double highestHz(double speedMPerS, double cabinLengthM, Arithmetic arithmetic) {
    return arithmetic.apply(
        HIGHEST_HZ, arithmetic.apply(CabinGain.CORNER, speedMPerS, cabinLengthM));
  }

  /** What one microphone heard of one channel, and from when on since the time reference, s. */
  record Low(GatedSpectrum gated, double sinceS) {}

  /** Adds what a position heard. */
  void add(Low l, Low r, double weight) {
    double shortest = Math.min(l.gated().lengthS(), r.gated().lengthS());
    lowHz = Math.max(lowHz, Math.max(1 / shortest, range == null ? 0 : range.lowHz()));
    // Lengths differ where a recording ends early: bins of the coarser one, the other between.
    int size = Math.min(l.gated().spectrum().size(), r.gated().spectrum().size());
    int stepL = l.gated().spectrum().size() / size;
    int stepR = r.gated().spectrum().size() / size;
    double width = rateHz / size;
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

  /** 1 for equal responses, −1 for opposite ones, 0 for unrelated ones or where nothing was added. */
  double value(Arithmetic arithmetic) {
    boolean empty = left == 0 || right == 0;
    return empty ? 0 : arithmetic.apply(LIKENESS, product, left, right);
  }

  /** From where on the positions tell, Hz. */
  double lowHz() {
    return Math.min(lowHz, highHz);
  }
}
