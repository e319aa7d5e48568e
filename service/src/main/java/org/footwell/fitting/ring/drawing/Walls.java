package org.footwell.fitting.ring.drawing;

import io.swagger.v3.oas.annotations.media.Schema;

/** Least material between two edges; negative where they overlap. */
public record Walls(
    @Schema(description = "Between outer and inner edge, mm") double rimMm,
    @Schema(description = "Between a factory hole and the outer edge, mm") double factoryToOuterMm,
    @Schema(description = "Between a factory hole and the inner edge, mm") double factoryToInnerMm,
    @Schema(description = "Between a pilot hole and the outer edge, mm") double pilotToOuterMm,
    @Schema(description = "Between a pilot hole and the inner edge, mm") double pilotToInnerMm,
    @Schema(description = "Between a pilot hole and a factory hole, mm") double pilotToFactoryMm,
    @Schema(description = "The least of all, mm") double smallestMm) {}
