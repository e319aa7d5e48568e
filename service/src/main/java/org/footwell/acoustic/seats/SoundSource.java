package org.footwell.acoustic.seats;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.parts.Driver;
import org.footwell.parts.EvenOrder;
import org.footwell.parts.Filter;
import org.footwell.parts.Position;

/** One driver, or several alike side by side, with their channel. */
@Built
@ExactlyOne({"power_w", "voltage_v"})
@Keeps(
    value = EvenOrder.class,
    of = {"high_pass", "low_pass"})
public record SoundSource(
    @Schema(description = "Name, unlike any other source's") @NotNull @Size(min = 1, max = 60)
        String name,
    @Schema(
            description =
                "The driver, or one of several alike, a rigid piston in half space. Heat sets a"
                    + " limit where its continuous_power_w is given, movement where its sd_cm2 and"
                    + " xmax_mm are")
        @NotNull
        Driver driver,
    @Schema(description = "Number of such drivers; they play as one, in phase") Integer driverCount,
    @Schema(description = "Clean sine power its amplifier gives into each driver, W") Double powerW,
    @Schema(description = "Largest clean sine voltage at the terminals of each driver, V RMS")
        Double voltageV,
    @Schema(description = "How it falls off at low frequencies by itself; absent: not at all")
        RollOff rollOff,
    Filter highPass,
    Filter lowPass,
    @Schema(description = "Delay of the channel, ms") Double delayMs,
    Double trimDb,
    Integer polarity,
    Position position) {

  public SoundSource {
    driverCount = driverCount == null ? Integer.valueOf(1) : driverCount;
    delayMs = delayMs == null ? Double.valueOf(0) : delayMs;
    trimDb = trimDb == null ? Double.valueOf(0) : trimDb;
    polarity = polarity == null ? Integer.valueOf(1) : polarity;
  }

  /** Second-order high-pass of a driver in a closed box or free air. */
  public record RollOff(
      @Schema(description = "Resonance in its box, or free air in a door, Hz")
          @NotNull
          @DecimalMin("5")
          @DecimalMax("20000")
          Double resonanceHz,
      @Schema(description = "Total Q there") @NotNull @DecimalMin("0.1") @DecimalMax("5")
          Double q) {}
}
