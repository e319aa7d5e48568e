package org.footwell.factory.rolloff;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Needs;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.Driver;
import org.footwell.recording.Recording;

/** Band levels at several volume steps. */
@Built
@ExactlyOne({"captures", "levels"})
@Unique("captures.*.volume_step")
@Ascending({"reference_from_hz", "reference_to_hz"})
@Needed({"driver.sd_cm2", "driver.xmax_mm"})
@Needs(field = "driver", beside = "driver_level")
@Needs(field = "driver_level", beside = "driver")
@Keeps(value = LevelsComplete.class, of = "levels")
@Keeps(CapturedBands.class)
@Keeps(StepsMeasured.class)
@Keeps(BandsMeasured.class)
public record BassRolloffRequest(
    @Schema(
            description =
                "Captures of the output with pink noise, one for each volume step, all with the same"
                    + " gain of the recorder")
        @Size(min = 1, max = 64)
        List<@NotNull NoiseCapture> captures,
    @Schema(description = "Levels of third octaves, every band at every volume step")
        @Size(min = 1, max = 2000)
        List<@NotNull BandAtStep> levels,
    @Schema(
            description =
                "Volume step at which the bass is as it should be; absent: the lowest. A loudness"
                    + " function lifts the bass of low steps: then take a step above it")
        @Min(-200)
        @Max(1000)
        Integer referenceStep,
    @Schema(
            description =
                "Lowest band, Hz: nominal or exact mid-band frequency. With captures only")
        @DecimalMin("10")
        @DecimalMax("200")
        Double lowestHz,
    @Schema(description = "Start of the range that bass is held against, Hz")
        @DecimalMin("100")
        @DecimalMax("10000")
        Double referenceFromHz,
    @Schema(description = "End of the range that bass is held against, Hz")
        @DecimalMin("100")
        @DecimalMax("20000")
        Double referenceToHz,
    @Schema(description = "Loss from which on the bass counts as falling behind, dB")
        @DecimalMin("0.1")
        @DecimalMax("12")
        Double thresholdDb,
    @Schema(description = "Most gain the equaliser can give, dB; absent: no such limit")
        @DecimalMin("0")
        @DecimalMax("40")
        Double mostGainDb,
    @Schema(description = "Room that is left electrically; absent: not known") Headroom headroom,
    @Schema(description = "The driver that plays the bass; absent: not known") Driver driver,
    @Schema(description = "How loud one such driver is at one volume step")
        DriverLevel driverLevel) {

  public BassRolloffRequest {
    lowestHz = lowestHz == null ? Double.valueOf(25) : lowestHz;
    referenceFromHz = referenceFromHz == null ? Double.valueOf(500) : referenceFromHz;
    referenceToHz = referenceToHz == null ? Double.valueOf(2000) : referenceToHz;
    thresholdDb = thresholdDb == null ? Double.valueOf(1) : thresholdDb;
  }

  /** One capture. */
  public record NoiseCapture(
      @NotNull Integer volumeStep,
      @Schema(description = "The output at this step") @NotNull Recording recording) {}

  /** One level of the table. */
  public record BandAtStep(
      @NotNull Integer volumeStep,
      @Schema(
              description =
                  "Mid-band frequency of the third octave, Hz; a nominal one is taken as the exact"
                      + " one it stands for")
          @NotNull
          @DecimalMin("10")
          @DecimalMax("20000")
          Double frequencyHz,
      @Schema(description = "Level of the band, dB against anything that stays the same")
          @NotNull
          @DecimalMin("-200")
          @DecimalMax("200")
          Double levelDb) {}

  /** Room left for the bass before the amplifier clips. */
  public record Headroom(
      @NotNull Integer volumeStep,
      @Schema(
              description =
                  "By how much each bass band could still be raised at that step before the"
                      + " amplifier clips, dB")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("60")
          Double headroomDb) {}

  /** How loud the driver is in one band at one volume step. */
  public record DriverLevel(
      @NotNull Integer volumeStep,
      @Schema(description = "A bass band that was measured, Hz: where level_db_spl was taken")
          @NotNull
          @DecimalMin("10")
          @DecimalMax("1000")
          Double frequencyHz,
      @Schema(
              description =
                  "Level of that band at that step, of one driver at 1 m in half space, without the"
                      + " cabin's gain, dB SPL; other bands follow by their electrical levels")
          @NotNull
          @DecimalMin("20")
          @DecimalMax("150")
          Double levelDbSpl,
      @Schema(
              description =
                  "Peak over RMS of the displacement, dB; pink noise and music have about 12")
          Double crestFactorDb) {

    public DriverLevel {
      crestFactorDb = crestFactorDb == null ? Double.valueOf(12) : crestFactorDb;
    }
  }
}
