package org.footwell.acoustic.level;

import static org.footwell.calculation.Source.COMMON_PRACTICE;

import org.footwell.calculation.Formula;
import org.footwell.physics.Decibels;

/**
 * Thermal compression that grows with average power: a voice coil whose resistance rises in
 * proportion to the power it takes. Past k·P = 1 the model has the level fall, so it stops there.
 */
final class Compression {

  /** Rise of the coil's resistance per watt, 1/W, from the loss at a stated power. */
  static final Formula.Of2 PER_WATT =
      Formula.of("compression_per_w", "(10^(C/20) − 1)/P", "1/W", COMMON_PRACTICE)
          .with("C", "P", (db, atPower) -> (Decibels.toAmplitude(db) - 1) / atPower);

  /** Level lost in dB at P watts. */
  static final Formula.Of2 LOSS_DB =
      Formula.of("compression_db", "20·lg(1 + k·P)", "dB", COMMON_PRACTICE)
          .with("k", "P", (k, power) -> Decibels.ofAmplitude(1 + k * power));

  /**
   * Power in W that, compressed, sounds like {@code X} watts would without: the smaller root of
   * P/(1 + k·P)² = X. NaN where k·X is above 1/4: no power is loud enough.
   */
  static final Formula.Of2 POWER_FOR =
      Formula.of("power_w", "2·X/(1 − 2·k·X + √(1 − 4·k·X))", "W", COMMON_PRACTICE)
          .with("k", "X", (k, x) -> 2 * x / (1 - 2 * k * x + Math.sqrt(1 - 4 * k * x)));

  private Compression() {}
}
