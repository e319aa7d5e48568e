package org.footwell.electrical.amplifier;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;

/** What an amplifier delivers into the load, and how that suits the driver. */
@Built
public record RailMatchResult(
    @Schema(description = "Clean sine power into the load at the stated supply, W")
        double cleanPowerW,
    @Schema(
            description =
                "Smallest likely clean power, W; below clean_power_w where ratings leave room")
        double cleanPowerLowW,
    @Schema(
            description =
                "Largest likely clean power, W; above clean_power_w where ratings leave room")
        double cleanPowerHighW,
    @Schema(description = "RMS voltage of that sine across the load, V") double voltageV,
    @Schema(description = "Peak voltage of that sine across the load, V") double peakVoltageV,
    @Schema(description = "Peak current of that sine through the load, A") double peakCurrentA,
    @Schema(description = "What ends clean power first; absent with ratings, which do not tell")
        LimitedBy limitedBy,
    @Schema(description = "Load that each half of a bridge of two channels sees, ohm")
        Double halfLoadOhm,
    @Schema(
            description =
                "RMS voltage of the source as the load sees it, without load, V; absent where"
                    + " ratings are power-limited or have no source")
        Double openCircuitV,
    @Schema(
            description =
                "Droop of the source as the load sees it, ohm; of both halves in a bridge of two"
                    + " channels; absent as open_circuit_v is")
        Double sagOhm,
    @Schema(description = "What the ratings look like; absent with rails")
        RatingsFit.Look character,
    @Schema(
            description =
                "With more than two ratings: root mean square of their voltages against the fitted"
                    + " source, dB")
        Double residualRmsDb,
    @Schema(
            description =
                "With more than two ratings: largest difference of a voltage from the fitted"
                    + " source, dB")
        Double residualLargestDb,
    @Schema(
            description =
                "Clean power over the driver's continuous power, dB; positive means the amplifier"
                    + " is larger; absent at no power")
        Double headroomDb,
    @Schema(
            description =
                "Limiter setting that keeps the driver's coil safe: RMS voltage of its continuous"
                    + " power into its rated impedance, V")
        Double limiterRmsV,
    @Schema(description = "Limiter setting that keeps the amplifier from clipping: peak voltage, V")
        double limiterPeakV,
    @Schema(
            description =
                "The same at other supply voltages: 11.0 to 14.4 V, or twice that for an amplifier"
                    + " stated above 18 V")
        List<AtSupply> atSupply) {

  /** What ends clean power first as the level rises. */
  public enum LimitedBy {
    /** The rails: voltage clips. */
    VOLTAGE,
    /** The current limit. */
    CURRENT
  }

  /** Clean power at one supply voltage. */
  public record AtSupply(
      double supplyV,
      @Schema(description = "Clean sine power into the load, W") double cleanPowerW,
      @Schema(description = "RMS voltage across the load, V") double voltageV,
      @Schema(
              description =
                  "Clean power over the driver's continuous power, dB; absent at no power")
          Double headroomDb) {}
}
