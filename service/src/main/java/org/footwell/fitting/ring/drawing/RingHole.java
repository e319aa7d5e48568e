package org.footwell.fitting.ring.drawing;

import io.swagger.v3.oas.annotations.media.Schema;

/** A round hole through the ring. */
public record RingHole(
    @Schema(description = "To the right of the centre, mm") double xMm,
    @Schema(description = "Above the centre, mm") double yMm,
    @Schema(description = "Diameter, mm") double diameterMm) {

  /** Material between two holes, mm. */
  public double wallTo(RingHole other) {
    return Math.hypot(xMm - other.xMm, yMm - other.yMm) - (diameterMm + other.diameterMm) / 2;
  }

  /** Material between the hole and an edge around it, mm. */
  public double wallWithin(Oval edge) {
    return edge.inside(xMm, yMm) - diameterMm / 2;
  }

  /** Material between the hole and an edge it lies outside of, mm. */
  public double wallOutside(Oval edge) {
    return -edge.inside(xMm, yMm) - diameterMm / 2;
  }
}
