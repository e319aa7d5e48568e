package org.footwell.acoustic.loudness;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** What keeps the balance at the listening level. */
public record EqualLoudnessResult(
    @Schema(description = "Largest lift advised among the bands, dB; 0 when none is lifted")
        double largestLiftDb,
    @Schema(description = "Nominal frequency of that band, Hz; absent when none is lifted")
        Double largestLiftHz,
    @Schema(description = "Third octaves of the range, rising") List<Band> bands) {

  /** One third octave. */
  public record Band(
      @Schema(description = "Nominal mid-band frequency, Hz") double frequencyHz,
      @Schema(description = "Level as loud as the tuned loudness level, dB SPL")
          double tunedLevelDbSpl,
      @Schema(description = "Level as loud as the listening loudness level, dB SPL")
          double listeningLevelDbSpl,
      @Schema(
              description =
                  "Lift against 1 kHz that keeps the balance, dB, before the cap; negative is a"
                      + " cut")
          double balanceDb,
      @Schema(description = "Lift advised, dB: the same within the cap") double liftDb) {}
}
