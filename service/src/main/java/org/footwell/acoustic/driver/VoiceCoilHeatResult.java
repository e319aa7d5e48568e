package org.footwell.acoustic.driver;

import io.swagger.v3.oas.annotations.media.Schema;

/** How warm a voice coil is, what that does to its resistance and level, and where it ends. */
public record VoiceCoilHeatResult(
    double coilC,
    @Schema(description = "Temperature of the magnet, °C; absent with a measured resistance")
        Double magnetC,
    double hotOhm,
    @Schema(description = "How much warmer than the air the coil is, K") double riseK,
    double compressionDb,
    @Schema(description = "Power the coil then takes, W; absent with a measured resistance")
        Double powerW,
    @Schema(description = "When nothing changes any more; absent with a measured resistance")
        Balance balance,
    @Schema(
            description =
                "Time from cold until the coil has largest_coil_c, s; absent when none is given"
                    + " or it has not within a day")
        Double limitAfterS) {

  /** As much heat leaves as comes in. */
  public record Balance(
      double coilC,
      double magnetC,
      double hotOhm,
      double compressionDb,
      @Schema(description = "Power the coil then takes, W") double powerW) {}
}
