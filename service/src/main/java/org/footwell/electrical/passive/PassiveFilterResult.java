package org.footwell.electrical.passive;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Called;
import org.footwell.parts.LadderElement;

/**
 * Parts of a passive filter and what they do. Levels are voltages at the load over that at the
 * amplifier.
 */
@Built
public record PassiveFilterResult(
    @Schema(description = "Every part, from the amplifier to the driver") List<Part> parts,
    @Schema(description = "The same ladder with the preferred values, as passive-network takes it")
        List<LadderElement> elements,
    @Schema(description = "Levels at the corners") List<Corner> corners,
    @Schema(
            description =
                "Largest change of level by rounding to the series, into the resistor, where the"
                    + " target is above −20 dB of its pass band, dB")
        double roundingDb,
    @Schema(description = "Where it is, Hz") double roundingHz,
    @Schema(
            description =
                "Largest deviation from the target with the real driver, likewise, dB; none without"
                    + " a driver")
        Double driverDeviationDb,
    @Schema(description = "Where it is, Hz") Double driverDeviationHz,
    @Schema(
            description =
                "Lowest modulus the amplifier sees with the preferred values and the driver, or the"
                    + " resistor without one, ohm")
        double lowestModulusOhm,
    @Called("lowest_at_hz") @Schema(description = "Where it is, Hz") double lowestHz,
    @Schema(description = "The curves") List<Point> points) {

  /** One part. */
  @Built
  public record Part(
      @Schema(description = "What it is there for") Purpose purpose,
      @Schema(description = "In the way to the driver or across it") LadderElement.Place place,
      @Schema(description = "Calculated capacitance, µF") Double capacitanceUf,
      @Schema(description = "Calculated inductance, mH") Double inductanceMh,
      @Schema(description = "Calculated resistance, ohm") Double resistanceOhm,
      @Schema(description = "Nearest preferred capacitance, µF") Double nearestUf,
      @Schema(description = "Nearest preferred inductance, mH") Double nearestMh,
      @Schema(description = "Nearest preferred resistance, ohm") Double nearestOhm,
      @Schema(description = "How much the preferred value is off, %") double offPercent,
      @Schema(
              description =
                  "Part of the power into load_ohm that turns to heat in it, in the pass band; of"
                      + " the resistors of a pad")
          Double heatShare,
      @Schema(description = "That heat at power_w, W") Double heatW) {}

  /** What a part is there for. */
  public enum Purpose {
    /** Part of the high-pass. */
    HIGH_PASS,
    /** Part of the low-pass. */
    LOW_PASS,
    /** Part of the level pad. */
    PAD,
    /** Part of the compensation; its resistor and capacitor are in series with each other. */
    COMPENSATION
  }

  /** Levels at a corner. */
  public record Corner(
      @Schema(description = "Which side it is of") Purpose side,
      @Schema(description = "Its frequency, Hz") double frequencyHz,
      @Schema(description = "What the ideal filter has there, dB") double targetDb,
      @Schema(description = "Calculated values into the resistor, dB") double resistorDb,
      @Schema(description = "Preferred values into the resistor, dB") double roundedDb,
      @Schema(description = "Preferred values with the real driver, dB") Double driverDb) {}

  /** One frequency of the curves. */
  public record Point(
      double frequencyHz,
      @Schema(description = "What the ideal filter has, dB") double targetDb,
      @Schema(description = "Calculated values into the resistor, dB") double resistorDb,
      @Schema(description = "Preferred values into the resistor, dB") double roundedDb,
      @Schema(description = "Preferred values with the real driver, dB") Double driverDb,
      @Schema(
              description =
                  "Modulus the amplifier sees with the preferred values and the driver, or the"
                      + " resistor without one, ohm")
          double modulusOhm,
      @Schema(description = "Phase of that impedance, degrees") double phaseDeg) {}
}
