package org.footwell.fitting.ring;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.footwell.fitting.ring.drawing.Oval;

/** A circle or an ellipse with its axes across and up: a diameter, or width and height. */
public record Outline(
    @Schema(description = "Diameter when round, mm. Exactly one of diameter_mm and width_mm")
        @DecimalMin("10")
        @DecimalMax("800")
        Double diameterMm,
    @Schema(description = "Width when oval, mm; height_mm goes with it")
        @DecimalMin("10")
        @DecimalMax("800")
        Double widthMm,
    @Schema(description = "Height when oval, mm; width_mm goes with it")
        @DecimalMin("10")
        @DecimalMax("800")
        Double heightMm) {

  /** The curve, once the request is known to be clear about it. */
  Oval oval() {
    return diameterMm != null ? Oval.round(diameterMm) : new Oval(widthMm, heightMm);
  }
}
