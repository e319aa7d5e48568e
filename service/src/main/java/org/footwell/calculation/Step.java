package org.footwell.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.Map;

/**
 * One step of the workings, as it would stand in a hand calculation.
 *
 * @param pointer the part of the request the step belongs to, absent for the whole
 */
public record Step(
    @Schema(description = "Part of the request the step is about; absent for the whole")
        String pointer,
    @Schema(
            description =
                "What is computed, ending in its unit; in a group or list of the result the path to it,"
                    + " of a list its first entry, as the others come about likewise")
        @NotNull
        String quantity,
    @Schema(description = "The formula in words and symbols, or in terms of fields") @NotNull
        String formula,
    @Schema(
            description =
                "Numbers put in, by symbol or field; those of a list of more than 32 stand in the"
                    + " result only")
        @NotNull
        Map<String, Double> inputs,
    @Schema(description = "What comes out") double value,
    @Schema(description = "Unit of the value, empty for a ratio") @NotNull String unit,
    @Schema(description = "Where the formula comes from") @NotNull String source) {}
