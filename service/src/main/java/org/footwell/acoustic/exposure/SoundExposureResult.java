package org.footwell.acoustic.exposure;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** How much of a day's noise that was. */
public record SoundExposureResult(
    @Schema(description = "By the recommendation of NIOSH: 85 dBA for 8 h, halved every 3 dB")
        Dose niosh,
    @Schema(
            description =
                "By 29 CFR 1910.95 with all levels from 80 dBA up, as its action level counts:"
                    + " 90 dBA for 8 h, halved every 5 dB")
        Dose cfr,
    @Schema(
            description =
                "The same with levels from 90 dBA up only, as its permissible exposure counts, %")
        double permissibleDosePercent,
    @Schema(description = "Steady level that carries the same energy in 8 h, dBA")
        double eightHourLevelDba,
    @Schema(description = "Time of all periods, h") double durationH,
    @Schema(description = "The periods in the order given") List<Line> periods) {

  /** A day's dose by one rule. */
  public record Dose(
      @Schema(description = "Dose of the day, %; 100 is all that is allowed") double dosePercent,
      @Schema(description = "Steady level of 8 h with that dose, dBA; absent without a dose")
          Double twaDba,
      @Schema(
              description =
                  "Time left at the level of the last period until the dose is 100 %, h; absent"
                      + " where that level is not counted")
          Double remainingH) {}

  /** One period. */
  public record Line(
      double levelDba,
      Double levelDbc,
      @Schema(description = "C-weighted less A-weighted level, dB: large where bass prevails")
          Double cMinusADb,
      double durationH,
      @Schema(description = "Its part of the NIOSH dose, %") double nioshDosePercent,
      @Schema(description = "Its part of the dose by 29 CFR 1910.95, %") double cfrDosePercent) {}
}
