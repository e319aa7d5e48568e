package org.footwell.vehicle;

import io.swagger.v3.oas.annotations.media.Schema;

/** How a driver goes into its opening. */
public record FitLine(
    @Schema(description = "Id of the driver") String driver,
    @Schema(description = "Largest cut-out the opening takes, mm") double openingMm,
    @Schema(
            description =
                "Width left beside the driver's cut-out, mm: a ring fills it; below 0 it does not go in")
        Double widthLeftMm,
    @Schema(description = "Depth the opening has behind the mounting face, mm") double depthMm,
    @Schema(description = "Depth left behind the driver, mm; below 0 it does not go in")
        Double depthLeftMm) {}
