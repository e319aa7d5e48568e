package org.footwell.electrical.passive;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Called;

/** What a passive network is to the amplifier and does to the driver. */
public record PassiveNetworkResult(
    @Schema(description = "Lowest modulus the amplifier sees in the range, ohm")
        double lowestModulusOhm,
    @Called("lowest_at_hz") @Schema(description = "Where it is, Hz") double lowestHz,
    @Schema(description = "Phase there, degrees; positive when inductive") double lowestPhaseDeg,
    @Schema(description = "Current at the lowest modulus, A RMS") Double highestCurrentA,
    @Schema(description = "Resistance to direct current, ohm; none when a capacitor blocks it")
        Double dcOhm,
    @Schema(
            description =
                "Highest level at the driver in the range, dB against the amplifier's voltage")
        double highestLevelDb,
    @Schema(description = "Where it is, Hz") double highestLevelHz,
    @Schema(description = "The curves") List<Point> points) {

  /** One frequency of the curves. */
  public record Point(
      double frequencyHz,
      @Schema(description = "Modulus the amplifier sees, ohm") double modulusOhm,
      @Schema(description = "Phase of that impedance, degrees; positive when inductive")
          double phaseDeg,
      @Schema(description = "Voltage at the driver over that at the amplifier, dB") double levelDb,
      @Schema(description = "Phase of the voltage at the driver against the amplifier's, degrees")
          double levelPhaseDeg) {}
}
