package org.footwell.fitting.ring;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needs;
import org.footwell.fitting.ring.drawing.Oval;

/** A circle or an ellipse with its axes across and up: a diameter, or width and height. */
@ExactlyOne({"diameter_mm", "width_mm"})
@AtMostOne({"diameter_mm", "height_mm"})
@Needs(field = "width_mm", beside = "height_mm")
@Needs(field = "height_mm", beside = "width_mm")
public record Outline(
    @Schema(description = "Diameter when round, mm") @DecimalMin("10") @DecimalMax("800")
        Double diameterMm,
    @Schema(description = "Width when oval, mm") @DecimalMin("10") @DecimalMax("800")
        Double widthMm,
    @Schema(description = "Height when oval, mm") @DecimalMin("10") @DecimalMax("800")
        Double heightMm) {

  /** Whether it is either the one or the other. */
  boolean clear() {
    return diameterMm == null
        ? widthMm != null && heightMm != null
        : widthMm == null && heightMm == null;
  }

  /** The curve of one that is {@linkplain #clear clear}. */
  Oval oval() {
    return diameterMm != null ? Oval.round(diameterMm) : new Oval(widthMm, heightMm);
  }
}
