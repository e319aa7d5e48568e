package org.footwell.analysis.tolerance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;

/** A figure estimated from samples, with the interval that holds the true one 95 times of 100. */
public record Estimate(
    @Schema(description = "The estimate") @NotNull Double value,
    @Schema(description = "Lower end of its 95 % interval") @NotNull Double low,
    @Schema(description = "Upper end of its 95 % interval") @NotNull Double high) {

  /** 95 of 100 values of a normal distribution are within so many standard deviations. */
  static final double NORMAL_95 = 1.959963984540054;

  static Estimate within(double value, double standardError) {
    double half = NORMAL_95 * standardError;
    return new Estimate(value, value - half, value + half);
  }

  /** The same of how far it is from zero. */
  Estimate size() {
    return value < 0 ? new Estimate(-value, -high, -low) : this;
  }

  /** Whether it is more, as far as the samples tell. */
  boolean clearlyAbove(Estimate other) {
    return low > other.high;
  }

  boolean clearlyAboveZero() {
    return low > 0;
  }
}
