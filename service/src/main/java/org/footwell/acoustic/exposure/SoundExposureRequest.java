package org.footwell.acoustic.exposure;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needs;
import org.footwell.calculation.rule.RefersTo;

/** What was or will be heard in one day. */
@RefersTo(field = "periods.*.spectrum", to = "bands.*.spectrum")
@Keeps(OneLevelPerBand.class)
@Keeps(WithinOneDay.class)
public record SoundExposureRequest(
    @Schema(description = "Periods of the day with one level each, in order; silence is left out")
        @NotNull
        @Size(min = 1, max = 96)
        List<@NotNull Period> periods,
    @Schema(description = "Bands of the spectra that periods name, to weight their levels")
        @Size(min = 1, max = 400)
        List<@NotNull Band> bands) {

  /** A time at one level. */
  @Built
  @ExactlyOne({"level_dba", "spectrum"})
  @Needs(field = "level_db_spl", beside = "spectrum")
  @AtMostOne({"spectrum", "level_dbc"})
  public record Period(
      @NotNull Double durationH,
      @Schema(description = "A-weighted equivalent level at the ear, dBA") Double levelDba,
      @Schema(description = "Name of the spectrum heard, among bands") @Size(min = 1, max = 60)
          String spectrum,
      @Schema(
              description =
                  "Unweighted level the spectrum is raised or lowered to, dB SPL; absent: the"
                      + " bands' own levels")
          @DecimalMin("0")
          @DecimalMax("180")
          Double levelDbSpl,
      @Schema(description = "C-weighted level, dBC, when it was measured beside level_dba")
          Double levelDbc,
      Double peakLevelDbc) {}

  /** One band of a spectrum. */
  public record Band(
      @Schema(description = "Name of the spectrum the band belongs to")
          @NotNull
          @Size(min = 1, max = 60)
          String spectrum,
      @Schema(
              description =
                  "Mid-band frequency, Hz; a nominal one of a third octave stands for the exact one")
          @NotNull
          @DecimalMin("5")
          @DecimalMax("40000")
          Double frequencyHz,
      @Schema(description = "Unweighted level of the band, dB SPL")
          @NotNull
          @DecimalMin("-50")
          @DecimalMax("180")
          Double levelDbSpl) {}
}
