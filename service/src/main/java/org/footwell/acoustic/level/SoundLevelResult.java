package org.footwell.acoustic.level;

import io.swagger.v3.oas.annotations.media.Schema;
import org.footwell.calculation.Built;

/** How loud it is at the seat. */
@Built
public record SoundLevelResult(
    @Schema(description = "Continuous level at the seat, dB SPL") double levelDbSpl,
    @Schema(description = "Instantaneous peak level at the seat, unweighted, dB SPL")
        double peakLevelDbSpl,
    @Schema(description = "Sensitivity of one driver per 1 W, dB SPL") double oneWattLevelDbSpl,
    @Schema(description = "Sensitivity of one driver at 2.83 V, dB SPL")
        double twoPointEightThreeVoltLevelDbSpl,
    @Schema(description = "Average power of one driver, W") double driverPowerW,
    @Schema(description = "Level gained or lost by the number of drivers, dB") double driverCountDb,
    @Schema(description = "Level change by distance, dB") double distanceDb,
    @Schema(description = "Low-frequency gain of the cabin, dB") Double cabinGainDb,
    @Schema(description = "Level lost to thermal compression, dB") double compressionDb,
    @Schema(description = "Power that reaches the target, W, counted as power_w is")
        Double powerNeededW,
    @Schema(description = "A-weighted level at the seat, dBA") Double levelDba,
    @Schema(description = "C-weighted level at the seat, dBC; only from a spectrum")
        Double levelDbc,
    @Schema(
            description =
                "C-weighted level plus crest factor, dBC: what the peaks are taken for where the"
                    + " spectrum is known")
        Double peakLevelDbc,
    @Schema(description = "A-weighted level above the road noise, dB") Double overRoadNoiseDb,
    @Schema(description = "Exposure allowed per day at this level by NIOSH 98-126, h")
        Double exposureAllowedH,
    @Schema(description = "What heat and cone movement allow, where their figures are given")
        Limits limits) {

  /** Continuous levels of this programme at the seat. */
  public record Limits(
      @Schema(description = "Largest level that every limit known allows, dB SPL")
          double largestLevelDbSpl,
      @Schema(description = "Which limit that is") Holds holds,
      @Schema(description = "Level at which the drivers take their continuous power, dB SPL")
          Double thermalLevelDbSpl,
      @Schema(
              description =
                  "Level at which the peaks of the programme, all at the frequency stated, move"
                      + " the cones to xmax, dB SPL")
          Double displacementLevelDbSpl,
      @Schema(
              description =
                  "One-way peak displacement at the power given, all peaks at the frequency stated,"
                      + " mm")
          Double displacementMm) {}

  /** What stops the level from rising. */
  public enum Holds {
    /** The power that was given. */
    POWER,
    /** The continuous power of the drivers. */
    THERMAL,
    /** The movement of the cones. */
    DISPLACEMENT
  }
}
