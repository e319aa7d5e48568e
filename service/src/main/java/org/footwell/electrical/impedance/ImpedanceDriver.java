package org.footwell.electrical.impedance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;

/** A driver as its terminals show it: Thiele/Small parameters that decide its impedance. */
@Built
public record ImpedanceDriver(
    @Schema(description = "DC resistance of the voice coil, ohm")
        @NotNull
        @DecimalMin("0.1")
        @DecimalMax("1000")
        Double reOhm,
    @Schema(
            description =
                "Inductance of the voice coil at le_at_hz, mH, as a data sheet or a bridge states it")
        @NotNull
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
    @Schema(description = "Resonance in free air, Hz")
        @NotNull
        @DecimalMin("2")
        @DecimalMax("10000")
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
    @Schema(description = "Volume of air as compliant as the suspension, litre; needed with a box")
        @DecimalMin("0.0001")
        @DecimalMax("10000")
        Double vasL) {

  public ImpedanceDriver {
    leExponent = leExponent == null ? Double.valueOf(1) : leExponent;
    leAtHz = leAtHz == null ? Double.valueOf(1000) : leAtHz;
  }
}
