package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.ExactlyOne;

/** One or several equal ports. */
@Built
@ExactlyOne({"diameter_mm", "slot"})
public record BoxPort(
    @Schema(description = "Number of equal ports") @Min(1) @Max(8) Integer count,
    @Schema(description = "Inside diameter of a round port, mm")
        @DecimalMin("5")
        @DecimalMax("1000")
        Double diameterMm,
    @Schema(description = "Inside of a rectangular port") Slot slot,
    @Schema(description = "Length of the port itself, without end corrections, mm")
        @DecimalMin("1")
        @DecimalMax("5000")
        Double lengthMm,
    @Schema(description = "Thickness of the port's wall, mm: it takes room in the box")
        @DecimalMin("0")
        @DecimalMax("50")
        Double wallMm,
    @Schema(description = "What surrounds the outer end") End outerEnd,
    @Schema(description = "What surrounds the inner end") End innerEnd) {

  public BoxPort {
    count = count == null ? Integer.valueOf(1) : count;
    wallMm = wallMm == null ? Double.valueOf(3) : wallMm;
    outerEnd = outerEnd == null ? End.FLANGED : outerEnd;
    innerEnd = innerEnd == null ? End.FREE : innerEnd;
  }

  /** A rectangular opening. */
  public record Slot(
      @Schema(description = "Inside width, mm") @NotNull @DecimalMin("5") @DecimalMax("2000")
          Double widthMm,
      @Schema(description = "Inside height, mm") @NotNull @DecimalMin("5") @DecimalMax("2000")
          Double heightMm) {}

  /**
   * What surrounds an end of a port. The usual rounded corrections are kept, for no port ends as ideally
   * as the exact ones, 0.8217 and 0.6133 radii, ask for; those tune up to 1.7 % higher.
   */
  public enum End {
    /** Flush with a panel: 0.85 of the radius is added. */
    FLANGED(0.85),
    /** Free in the air: 0.61 of the radius is added. */
    FREE(0.61);

    private final double correction;

    End(double correction) {
      this.correction = correction;
    }

    public double correction() {
      return correction;
    }
  }

  /** Area of one port, m²; exactly one of diameter and slot is given. */
  public double areaM2() {
    return slot == null
        ? Math.PI * square(diameterMm / 2000)
        : slot.widthMm() * slot.heightMm() / 1e6;
  }

  /** Area of one port with its walls, m². */
  public double outerAreaM2() {
    return slot == null
        ? Math.PI * square((diameterMm / 2 + wallMm) / 1000)
        : (slot.widthMm() + 2 * wallMm) * (slot.heightMm() + 2 * wallMm) / 1e6;
  }

  private static double square(double x) {
    return x * x;
  }
}
