package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.calculation.rule.Needs;

/** A listener: the midpoint between the ears, or both ears; what a calculation needs it says at its place. */
@Built
@AtMostOne({"position", "left_ear"})
@Needs(field = "left_ear", beside = "right_ear")
@Needs(field = "right_ear", beside = "left_ear")
public record Seat(
    @Schema(description = "What the seat is called") @Size(min = 1, max = 60) String name,
    Double weight,
    @Schema(description = "Midpoint between the listener's ears, in vehicle axes (ISO 8855)")
        Position position,
    @Schema(
            description =
                "Left ear, with right_ear instead of position: where ears are told apart each is a"
                    + " listening point with half the weight")
        Position leftEar,
    @Schema(description = "Right ear, with left_ear") Position rightEar) {

  public Seat {
    weight = weight == null ? Double.valueOf(1) : weight;
  }

  /** The midpoint between the ears, however they are given; null where they are not. */
  public Position head() {
    return position != null || leftEar == null || rightEar == null
        ? position
        : leftEar.middleTo(rightEar);
  }
}
