package org.footwell.signal;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Keeps;

/** One section of an equaliser in the path of a channel. */
@Keeps(SectionMembers.class)
public record EqualiserSection(
    @Schema(description = "Id of the way or output it belongs to") @NotNull @Size(min = 1, max = 40)
        String channel,
    @Schema(description = "Kind of section") @NotNull SectionKind kind,
    @Schema(
            description =
                "Centre of a peak, notch or all-pass; for a shelf where half its gain in dB is"
                    + " reached, Hz")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("100000")
        Double frequencyHz,
    @Schema(
            description =
                "Quality factor. Peak: frequency over the bandwidth between the points of half"
                    + " its gain in dB. Notch: over that between the -3.01 dB points. Shelf of"
                    + " the second order: of its poles, 0.7071 is the steepest without overshoot."
                    + " All-pass of the second order: of its poles. None for first orders")
        @DecimalMin("0.1")
        @DecimalMax("100")
        Double q,
    @Schema(description = "Gain of a peak or shelf, dB; none for others")
        @DecimalMin("-30")
        @DecimalMax("30")
        Double gainDb) {

  /** The section as a digital one. */
  public Biquad design(double rateHz) {
    return kind.design(frequencyHz, q == null ? 1 : q, gainDb == null ? 0 : gainDb, rateHz);
  }
}
