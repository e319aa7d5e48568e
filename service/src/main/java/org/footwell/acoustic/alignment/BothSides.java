package org.footwell.acoustic.alignment;

import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;

/**
 * The lower channel and the sum of the upper ones at one frequency and place.
 *
 * @param radPerMs how far a delay of 1 ms turns the lower channel
 * @param lower modulus of its pressure
 * @param upper modulus of the upper ones' sum
 * @param leadRad angle by which the lower channel leads that sum
 * @param inPhase sum of the moduli of all channels: the pressure if all were in phase
 */
record BothSides(double radPerMs, double lower, double upper, double leadRad, double inPhase) {

  /** No sum is called quieter than this, dB: real nulls end long before. */
  static final double DEEPEST_DB = -100;

  /** Less is rounding, dB. */
  private static final double NOTHING_DB = 1e-9;

  /**
   * By their pressures.
   *
   * @param upper sum of the upper ones
   * @param upperModuli sum of their moduli
   */
  static BothSides of(double frequencyHz, Phasor lower, Phasor upper, double upperModuli) {
    double lead = Math.atan2(lower.im(), lower.re()) - Math.atan2(upper.im(), upper.re());
    double own = lower.modulus();
    return new BothSides(
        2 * Math.PI * frequencyHz / 1000, own, upper.modulus(), lead, own + upperModuli);
  }

  /** The same with the lower channel inverted. */
  BothSides inverted() {
    return new BothSides(radPerMs, lower, upper, leadRad + Math.PI, inPhase);
  }

  /**
   * Their sum against all channels in phase, dB, 0 or below.
   *
   * @param delayMs by which the lower channel comes later
   */
  double lossDb(double delayMs) {
    if (inPhase == 0) {
      return 0;
    }
    double power =
        lower * lower + upper * upper + 2 * lower * upper * Math.cos(leadRad - radPerMs * delayMs);
    double ratio = Math.max(power / (inPhase * inPhase), Decibels.toPower(DEEPEST_DB));
    double loss = Decibels.ofPower(ratio);
    return loss > -NOTHING_DB ? 0 : loss;
  }

  /**
   * Of some delays those at which no more is lost. The sum falls with the angle θ between both sides,
   * |p|² = l² + u² + 2·l·u·cos θ, so they lie around each delay that brings θ to a whole turn.
   *
   * @param power what must be left of the power of all in phase, 0 to 1
   */
  DelayRanges leaving(double power, DelayRanges among) {
    double needed = inPhase * inPhase * power - lower * lower - upper * upper;
    double most = 2 * lower * upper;
    if (needed <= -most) {
      return among;
    }
    if (needed > most) {
      return DelayRanges.NONE;
    }
    return among.around(
        leadRad / radPerMs, 2 * Math.PI / radPerMs, Math.acos(needed / most) / radPerMs);
  }
}
