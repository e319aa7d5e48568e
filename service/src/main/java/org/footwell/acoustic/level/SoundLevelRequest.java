package org.footwell.acoustic.level;

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
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Needs;
import org.footwell.parts.Cabin;
import org.footwell.parts.Driver;
import org.footwell.physics.Decibels;

/** What the level at a seat depends on. */
@Built
@Needed({"driver.sensitivity", "driver.rated_ohm", "cabin.length_m"})
@ExactlyOne({"power_w", "voltage_v"})
@AtMostOne({"spectrum", "a_weighting_db"})
@Needs(field = "frequency_hz", beside = "cabin")
@Needs(
    field = "displacement_hz",
    beside = {"driver.sd_cm2", "driver.xmax_mm"})
@Keeps(SeveralDriversDecided.class)
@Keeps(value = ProgrammeBands.class, of = "spectrum")
public record SoundLevelRequest(
    @Schema(
            description =
                "One of the drivers. Its continuous_power_w is held against its average power, and"
                    + " its movement against its xmax_mm where displacement_hz is given")
        @NotNull
        Driver driver,
    @Schema(
            description =
                "Average electrical power of the programme, W: of each driver or shared, as drive"
                    + " says")
        Double powerW,
    @Schema(description = "RMS voltage at the terminals of each driver, V") Double voltageV,
    Double distanceM,
    Integer driverCount,
    @Schema(description = "With several drivers and power_w: whether they share it or each gets it")
        Drive drive,
    @Schema(description = "With several drivers: whether they add in phase") Addition addition,
    @Schema(
            description =
                "When the seat is inside a cabin; otherwise half space. Its length, critical"
                    + " distance and gain cap count here, not a measured table")
        Cabin cabin,
    @Schema(
            description =
                "Frequency the level is for, Hz; when given, the rise of the cabin below"
                    + " c/(2·length) is included")
        @DecimalMin("5")
        @DecimalMax("20000")
        Double frequencyHz,
    @Schema(description = "Thermal compression, when it is known") Compression compression,
    Double crestFactorDb,
    @Schema(description = "Level wanted at the seat, dB SPL") @DecimalMin("20") @DecimalMax("180")
        Double targetLevelDbSpl,
    Double roadNoiseDba,
    @Schema(
            description =
                "Spectrum of the programme at the seat, to A-weight the level; only the"
                    + " differences between its levels count")
        @Size(min = 1, max = 64)
        List<@NotNull Band> spectrum,
    @Schema(
            description =
                "A-weighted minus unweighted level of the programme, dB, when it is known instead"
                    + " of a spectrum")
        Double aWeightingDb,
    Double displacementHz) {

  public SoundLevelRequest {
    distanceM = distanceM == null ? Double.valueOf(1) : distanceM;
    driverCount = driverCount == null ? Integer.valueOf(1) : driverCount;
    crestFactorDb = crestFactorDb == null ? Double.valueOf(Decibels.SINE_CREST) : crestFactorDb;
  }

  /** How several drivers get their power. */
  public enum Drive {
    /** The power is the total of all drivers. */
    SHARED,
    /** Every driver gets the power. */
    EACH
  }

  /** How the sound of several drivers adds. */
  public enum Addition {
    /** In phase: 6 dB for two equal drivers. */
    COHERENT,
    /** Unrelated phases: 3 dB for two equal drivers. */
    INCOHERENT
  }

  /** How much level a hot voice coil loses. */
  public record Compression(
      @Schema(description = "Level lost at the stated power, dB")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("12")
          Double compressionDb,
      @Schema(description = "Average power per driver at which it was found, W")
          @NotNull
          @DecimalMin("0.01")
          @DecimalMax("20000")
          Double atPowerW) {}

  /** One band of a spectrum. */
  public record Band(
      @Schema(description = "Mid-band frequency, Hz") @NotNull @DecimalMin("5") @DecimalMax("40000")
          Double frequencyHz,
      @Schema(description = "Unweighted level of the band, dB")
          @NotNull
          @DecimalMin("-200")
          @DecimalMax("200")
          Double levelDb) {}
}
