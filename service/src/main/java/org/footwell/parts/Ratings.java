package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;

/** One amplifier channel, or a bridged pair, by its published powers. */
public record Ratings(
    @Schema(description = "Supply voltage of the vehicle at which the powers are stated, V")
        @NotNull
        Double supplyV,
    @Schema(
            description =
                "What kind of power is stated: clean (sine, at most 1 % THD), thd_10 (sine driven to"
                    + " 10 % THD) or square_wave (the '4 x 50 W' kind of head units)")
        @NotNull
        Basis basis,
    @Schema(description = "Rated loads with their powers; at least two different loads")
        @NotNull
        @Size(min = 2, max = 12)
        List<@NotNull Point> points,
    @Schema(description = "Whether the powers are those of two channels bridged") Boolean bridged,
    @Schema(
            description =
                "Whether the amplifier works straight from the vehicle supply, each output a bridge"
                    + " without a step-up converter: no clean sine passes supply squared over twice"
                    + " the load")
        Boolean singleSupplyBridge) {

  public Ratings {
    bridged = bridged == null ? Boolean.FALSE : bridged;
    singleSupplyBridge = singleSupplyBridge == null ? Boolean.FALSE : singleSupplyBridge;
  }

  /** One published power. */
  public record Point(
      @Schema(description = "Load it is stated for, ohm") @NotNull Double loadOhm,
      @Schema(description = "Power of one channel, or of the bridged pair, W") @NotNull
          Double powerW) {}

  /** What kind of power a rating states, and how many times the clean power that is. */
  public enum Basis {
    /** Sine power at the onset of clipping, at most 1 % THD. */
    CLEAN(1, 1, 1),
    /** Sine power at 10 % THD: 1.2 to 1.3 times the clean power, common practice. */
    THD_10(1.25, 1.2, 1.3),
    /** Fully clipped: a square wave has twice the power of the sine of the same peak. */
    SQUARE_WAVE(2, 2, 2);

    private final double usual;
    private final double least;
    private final double most;

    Basis(double usual, double least, double most) {
      this.usual = usual;
      this.least = least;
      this.most = most;
    }

    /** Stated over clean power, as usually met. */
    public double timesClean() {
      return usual;
    }

    /** Smallest usual ratio of stated to clean power. */
    public double timesCleanLeast() {
      return least;
    }

    /** Largest usual ratio of stated to clean power. */
    public double timesCleanMost() {
      return most;
    }
  }
}
