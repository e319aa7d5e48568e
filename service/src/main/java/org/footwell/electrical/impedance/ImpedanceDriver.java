package org.footwell.electrical.impedance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;

/** A driver as its terminals show it: Thiele/Small parameters that decide its impedance. */
@Built
public record ImpedanceDriver(
    @NotNull Double reOhm,
    @Schema(
            description =
                "Inductance of the voice coil at le_at_hz, mH, as a data sheet or a bridge states it")
        @NotNull
        Double leMh,
    Double leExponent,
    Double leAtHz,
    @NotNull Double fsHz,
    @NotNull Double qms,
    @NotNull Double qes,
    Double vasL) {

  public ImpedanceDriver {
    leExponent = leExponent == null ? Double.valueOf(1) : leExponent;
    leAtHz = leAtHz == null ? Double.valueOf(1000) : leAtHz;
  }
}
