package org.footwell.acoustic.enclosure.lowend;

import io.swagger.v3.oas.annotations.media.Schema;
import org.footwell.calculation.Built;

/** One frequency of the curve of a driver in a box. */
@Built
public record BoxPoint(
    double frequencyHz,
    @Schema(description = "Level at 1 m in half space at the stated drive, dB SPL")
        double levelDbSpl,
    @Schema(
            description =
                "Phase of the sound against the voltage, degrees, without the way to the listener")
        double phaseDeg,
    @Schema(description = "Group delay, ms, without the way to the listener") double groupDelayMs,
    @Schema(description = "Displacement of the cone at the stated drive, one-way peak, mm")
        double displacementMm,
    @Schema(description = "Air speed in the port at the stated drive, peak, m/s")
        Double portVelocityMPerS,
    @Schema(description = "Level at which the displacement reaches xmax, dB SPL")
        Double displacementLimitedDbSpl,
    @Schema(description = "Level at the continuous power of the driver, dB SPL")
        Double thermallyLimitedDbSpl,
    @Schema(description = "The lower of the two, dB SPL") Double maxLevelDbSpl,
    @Schema(description = "Which of the two is the lower one") Limit limitedBy,
    @Schema(description = "What the cabin adds, dB") Double cabinGainDb,
    @Schema(description = "Level at the stated drive with the cabin, dB SPL")
        Double cabinLevelDbSpl,
    @Schema(
            description =
                "Level in a sealed and rigid cabin of the volume given, dB SPL: the most a real one"
                    + " comes near to; absent above its pressure corner")
        Double sealedCabinLevelDbSpl) {

  /** What holds the level. */
  public enum Limit {
    /** The way the cone can go. */
    DISPLACEMENT,
    /** The heat the voice coil can bear. */
    THERMAL
  }
}
