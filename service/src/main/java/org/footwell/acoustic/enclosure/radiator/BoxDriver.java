package org.footwell.acoustic.enclosure.radiator;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;

/** A driver to be put in a box: its Thiele/Small parameters and what it can take. */
@Built
public record BoxDriver(
    @NotNull Double reOhm,
    @Schema(description = "Rated impedance, ohm: what powers in watt are counted into") @NotNull
        Double ratedOhm,
    @NotNull Double fsHz,
    @NotNull Double qms,
    @NotNull Double qes,
    @NotNull Double vasL,
    @NotNull Double sdCm2,
    Double xmaxMm,
    @Schema(
            description =
                "Inductance of the voice coil at le_at_hz, mH; it is in the curve, not in f3, f10"
                    + " and peak")
        Double leMh,
    Double leExponent,
    Double leAtHz,
    Double continuousPowerW) {

  public BoxDriver {
    leMh = leMh == null ? Double.valueOf(0) : leMh;
    leExponent = leExponent == null ? Double.valueOf(1) : leExponent;
    leAtHz = leAtHz == null ? Double.valueOf(1000) : leAtHz;
  }
}
