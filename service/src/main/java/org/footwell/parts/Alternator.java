package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Ascending;

/** The alternator. */
@Built
@Ascending({"low_v", "voltage_v"})
@Ascending(
    value = {"idle_a", "cruise_a"},
    orEqual = true)
public record Alternator(
    @Schema(description = "Output when hot with the engine at idle, A")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("1000")
        Double idleA,
    @Schema(description = "Output when hot at cruising speed, A")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("1000")
        Double cruiseA,
    @Schema(description = "Voltage it holds while it can give the current, V")
        @NotNull
        @DecimalMin("5")
        @DecimalMax("60")
        Double voltageV,
    @Schema(
            description =
                "Lowest voltage the vehicle commands from a smart alternator to save fuel, V; when"
                    + " given, also what that does")
        @DecimalMin("5")
        @DecimalMax("60")
        Double lowV) {}
