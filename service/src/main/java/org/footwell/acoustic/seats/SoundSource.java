package org.footwell.acoustic.seats;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;
import org.footwell.parts.Filter;
import org.footwell.parts.Position;
import org.footwell.parts.Sensitivity;

/** One loudspeaker with its channel. Exactly one of {@code powerW} and {@code voltageV}. */
@Built
public record SoundSource(
    @Schema(description = "Name, unlike any other source's") @NotNull @Size(min = 1, max = 60)
        String name,
    @Schema(description = "Sensitivity on axis, in its pass band") @NotNull Sensitivity sensitivity,
    @NotNull Double ratedOhm,
    @Schema(
            description =
                "Clean sine power its amplifier gives into it, W. Exactly one of power_w and"
                    + " voltage_v")
        Double powerW,
    @Schema(
            description =
                "Largest clean sine voltage at its terminals, V RMS. Exactly one of power_w and"
                    + " voltage_v")
        Double voltageV,
    @Schema(description = "Continuous power it bears, W; absent: heat sets no limit")
        Double continuousPowerW,
    @Schema(description = "Its cone; absent: movement sets no limit") Cone cone,
    @Schema(description = "How it falls off at low frequencies by itself; absent: not at all")
        RollOff rollOff,
    Filter highPass,
    Filter lowPass,
    @Schema(description = "Delay of the channel, ms") Double delayMs,
    Double trimDb,
    Integer polarity,
    Position position) {

  public SoundSource {
    delayMs = delayMs == null ? Double.valueOf(0) : delayMs;
    trimDb = trimDb == null ? Double.valueOf(0) : trimDb;
    polarity = polarity == null ? Integer.valueOf(1) : polarity;
  }

  /** A cone taken as a rigid piston in half space. */
  public record Cone(
      @Schema(description = "Effective cone area of all its drivers together, cm²") @NotNull
          Double sdCm2,
      @NotNull Double xmaxMm) {}

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
