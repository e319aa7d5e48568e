package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.AtMostOne;

/** The battery. */
@Built
@AtMostOne({"peukert_exponent", "reserve_min"})
public record Battery(
    @Schema(description = "Capacity at the 20 h rate, Ah")
        @NotNull
        @DecimalMin("5")
        @DecimalMax("2000")
        Double capacityAh,
    @Schema(
            description =
                "Peukert's exponent; when neither this nor reserve_min is given 1.0, which"
                    + " flatters: 1.05 to 1.15 is usual for absorbed glass mat, 1.2 and more for"
                    + " flooded batteries")
        @DecimalMin("1")
        @DecimalMax("1.6")
        Double peukertExponent,
    @Schema(
            description =
                "Reserve capacity, min: how long 25 A last from full to 10.5 V; gives Peukert's"
                    + " exponent")
        @DecimalMin("5")
        @DecimalMax("5000")
        Double reserveMin,
    @Schema(description = "State of charge to begin with, as a share of the capacity")
        @DecimalMin("0.05")
        @DecimalMax("1")
        Double charge,
    @Schema(description = "Voltage at rest, halfway through the discharge, V; about 12.4")
        @NotNull
        @DecimalMin("5")
        @DecimalMax("60")
        Double restingV,
    @Schema(description = "Internal resistance with its terminals, ohm")
        @DecimalMin("0.0005")
        @DecimalMax("1")
        Double internalOhm,
    @Schema(
            description =
                "Share of the capacity that still starts the engine (the default is common"
                    + " practice; cold weather asks for more)")
        @DecimalMin("0")
        @DecimalMax("1")
        Double startCharge,
    @Schema(
            description =
                "Share of the capacity lost by itself in 30 days (the default is common practice"
                    + " at 20 °C)")
        @DecimalMin("0")
        @DecimalMax("0.5")
        Double selfDischarge) {

  public Battery {
    charge = charge == null ? Double.valueOf(1) : charge;
    internalOhm = internalOhm == null ? Double.valueOf(0.01) : internalOhm;
    startCharge = startCharge == null ? Double.valueOf(0.5) : startCharge;
    selfDischarge = selfDischarge == null ? Double.valueOf(0.03) : selfDischarge;
  }
}
