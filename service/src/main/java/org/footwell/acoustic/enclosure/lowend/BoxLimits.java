package org.footwell.acoustic.enclosure.lowend;

import io.swagger.v3.oas.annotations.media.Schema;
import org.footwell.calculation.Built;
import org.footwell.parts.Filter;

/** How far the cone goes and what that allows. */
@Built
public record BoxLimits(
    @Schema(description = "RMS voltage of the drive, V") double voltageV,
    @Schema(description = "Its power into the rated impedance, W") double powerW,
    @Schema(description = "Largest displacement in the range, one-way peak, mm")
        double largestDisplacementMm,
    @Schema(description = "Where it is, Hz") double largestDisplacementHz,
    @Schema(description = "Whether it keeps within xmax") Boolean xmaxKept,
    @Schema(
            description =
                "Frequency below which the displacement exceeds xmax at the stated drive, Hz; the"
                    + " highest, when there are several")
        Double xmaxExceededBelowHz,
    @Schema(description = "Power at which it just reaches xmax somewhere in the range, W")
        Double displacementPowerW,
    @Schema(
            description =
                "The same from the tuning of a vented box upwards, W: what is left when all below"
                    + " is filtered away")
        Double protectedPowerW,
    @Schema(
            description =
                "High-pass with the lowest corner that keeps the displacement within xmax at the"
                    + " stated drive; absent when none is needed or none can do it")
        Filter subsonic,
    @Schema(
            description =
                "Frequency up to which the model holds, Hz: the box is an eighth of a wavelength"
                    + " long there, or the circumference of the cone a whole one")
        double modelLimitHz) {}
