package org.footwell.acoustic.enclosure.radiator;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;

/** A driver to be put in a box: its Thiele/Small parameters and what it can take. */
@Built
public record BoxDriver(
    @Schema(description = "DC resistance of the voice coil, ohm")
        @NotNull
        @DecimalMin("0.1")
        @DecimalMax("1000")
        Double reOhm,
    @Schema(description = "Rated impedance, ohm: what powers in watt are counted into")
        @NotNull
        @DecimalMin("0.5")
        @DecimalMax("600")
        Double ratedOhm,
    @Schema(description = "Resonance in free air, Hz") @NotNull @DecimalMin("2") @DecimalMax("2000")
        Double fsHz,
    @Schema(description = "Mechanical Q at resonance in free air")
        @NotNull
        @DecimalMin("0.05")
        @DecimalMax("200")
        Double qms,
    @Schema(description = "Electrical Q at resonance in free air")
        @NotNull
        @DecimalMin("0.02")
        @DecimalMax("200")
        Double qes,
    @Schema(description = "Volume of air as compliant as the suspension, litre")
        @NotNull
        @DecimalMin("0.001")
        @DecimalMax("10000")
        Double vasL,
    @Schema(description = "Effective cone area, cm2")
        @NotNull
        @DecimalMin("0.5")
        @DecimalMax("5000")
        Double sdCm2,
    @Schema(description = "Largest linear displacement, one-way peak, mm")
        @DecimalMin("0.01")
        @DecimalMax("200")
        Double xmaxMm,
    @Schema(
            description =
                "Inductance of the voice coil at le_at_hz, mH; it is in the curve, not in f3, f10"
                    + " and peak")
        @DecimalMin("0")
        @DecimalMax("100")
        Double leMh,
    @Schema(
            description =
                "Exponent of the lossy inductance: its impedance grows with this power of"
                    + " frequency. 1 is an ideal coil; most voice coils have 0.6 to 0.8")
        @DecimalMin("0.4")
        @DecimalMax("1")
        Double leExponent,
    @Schema(
            description =
                "Frequency the inductance is stated at, Hz; of no effect when the exponent is 1")
        @DecimalMin("20")
        @DecimalMax("40000")
        Double leAtHz,
    @Schema(
            description =
                "Continuous power the voice coil takes, W into the rated impedance: the thermal"
                    + " limit")
        @DecimalMin("0.1")
        @DecimalMax("20000")
        Double continuousPowerW) {

  public BoxDriver {
    leMh = leMh == null ? Double.valueOf(0) : leMh;
    leExponent = leExponent == null ? Double.valueOf(1) : leExponent;
    leAtHz = leAtHz == null ? Double.valueOf(1000) : leAtHz;
  }
}
