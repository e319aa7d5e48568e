package org.footwell.acoustic.crossover;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.Needed;
import org.footwell.parts.Driver;
import org.footwell.parts.WayRole;

/** One way on one side of the vehicle: its driver, and what it is used for. */
@Built
@Needed({"driver.sd_cm2", "driver.rated_ohm"})
@Ascending(
    value = {"driver.fs_hz", "fc_hz"},
    orEqual = true)
public record CrossoverWay(
    @Schema(description = "Name of the way, used in the answer") @NotNull @Size(min = 1, max = 40)
        String id,
    @Schema(
            description =
                "What it is used as. A tweeter is kept at a multiple of its resonance; below a"
                    + " subwoofer's crossover the ear must not find the place. Without it the last"
                    + " way counts as a tweeter")
        WayRole role,
    @Schema(
            description =
                "Its driver; without a qts its own roll-off counts as Butterworth, 0.707. Of a"
                    + " tweeter, fs_hz as its data sheet states it")
        @NotNull
        Driver driver,
    @Schema(
            description =
                "Resonance in its closed box, Hz, which then counts instead of the driver's fs_hz; Q"
                    + " rises with it. Without it the driver is as in free air")
        @DecimalMin("5")
        @DecimalMax("5000")
        Double fcHz,
    @Schema(
            description =
                "Lowest crossover as a multiple of the resonance; without it 2 for a tweeter and 1"
                    + " for others (common practice)")
        @DecimalMin("0.5")
        @DecimalMax("10")
        Double resonanceMultiple,
    @Schema(description = "Distance between its centre and that of the next way, mm")
        @DecimalMin("1")
        @DecimalMax("5000")
        Double spacingToNextMm) {

  /** The resonance that counts, Hz, or null when none is known. */
  Double resonanceHz() {
    return fcHz == null ? driver.fsHz() : fcHz;
  }
}
