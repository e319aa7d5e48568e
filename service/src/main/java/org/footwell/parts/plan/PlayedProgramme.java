package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.rule.Ascending;
import org.footwell.parts.LevelAt;

/** What is played. */
@Ascending("spectrum.*.frequency_hz")
public record PlayedProgramme(
    @NotNull Double crestFactorDb,
    @Schema(
            description =
                "Relative levels of its third octaves, dB; without it the simulated programme of IEC"
                    + " 60268-1")
        @Size(min = 1, max = 40)
        List<@NotNull LevelAt> spectrum,
    @Schema(description = "Hours a day it is listened to at full level, to hold against exposure")
        Double durationH,
    Boolean sustainedBass) {

  /** Usual for music; common practice, no source. */
  private static final double USUAL_CREST_DB = 12;

  public PlayedProgramme {
    sustainedBass = sustainedBass == null ? Boolean.FALSE : sustainedBass;
  }

  static PlayedProgramme usual() {
    return new PlayedProgramme(USUAL_CREST_DB, null, null, null);
  }
}
