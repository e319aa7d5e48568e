package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.rule.ExactlyOne;

/**
 * Losses of a class D stage in two parts: one that is always there and one that grows with the
 * square of the output current.
 */
@ExactlyOne({"on_ohm", "full_power_efficiency"})
public record ClassD(
    @Schema(description = "Loss without signal: switching, driving and control, W")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("500")
        Double idleLossW,
    @Schema(
            description =
                "Resistance in the way of the output current: switches, filter coils and tracks,"
                    + " ohm")
        @DecimalMin("0")
        @DecimalMax("10")
        Double onOhm,
    @Schema(
            description =
                "Output over rail power with a sine at full swing into a resistance of load_ohm,"
                    + " as a ratio, without the converter")
        @DecimalMin("0.3")
        @DecimalMax("1")
        Double fullPowerEfficiency) {}
