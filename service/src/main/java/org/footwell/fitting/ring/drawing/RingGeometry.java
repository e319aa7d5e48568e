package org.footwell.fitting.ring.drawing;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** The ring seen from the front: x to the right, y up, the centre at 0. */
public record RingGeometry(
    @Schema(description = "Outer edge") Oval outer,
    @Schema(description = "Inner edge") Oval inner,
    @Schema(description = "Edge of the driver's frame, for reference") Oval frame,
    @Schema(description = "Cut-out of the panel, for reference") Oval panelCutOut,
    @Schema(description = "Holes for the factory screws") List<RingHole> factoryHoles,
    @Schema(description = "Pilot holes for the driver's screws") List<RingHole> pilotHoles,
    @Schema(description = "How far straight edges may leave a curve, mm") double arcToleranceMm) {}
