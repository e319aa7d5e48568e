package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.ExactlyOne;

/** A converter, a processor or the amplifier. */
@Built
@ExactlyOne({"gain", "sensitivity"})
public record Stage(
    @Schema(description = "What the fitter calls it") @NotNull @Size(min = 1, max = 60) String name,
    @Schema(description = "Largest clean input, V RMS of a sine")
        @NotNull
        @DecimalMin("0.001")
        @DecimalMax("200")
        Double maxInputV,
    @Schema(
            description =
                "Largest clean output, V RMS of a sine; of the amplifier into load_ohm, with what"
                    + " its supply sags")
        @NotNull
        @DecimalMin("0.001")
        @DecimalMax("500")
        Double maxOutputV,
    @Schema(description = "Gains that can be set; equal bounds for a fixed gain") Gain gain,
    @Schema(description = "Gains that can be set, by the input that gives max_output_v")
        Sensitivity sensitivity,
    @Schema(
            description =
                "Noise that follows the gain: as a voltage at the input, microvolt RMS; absent:"
                    + " none, if output_noise_uv is given")
        @DecimalMin("0")
        @DecimalMax("1000000")
        Double inputNoiseUv,
    @Schema(
            description =
                "Noise that does not follow the gain: at the output, microvolt RMS; absent: none,"
                    + " if input_noise_uv is given")
        @DecimalMin("0")
        @DecimalMax("1000000")
        Double outputNoiseUv,
    @Schema(
            description =
                "Whether its input takes a bridged loudspeaker output as it is, with neither side"
                    + " on ground; absent: unknown. Asked for the first stage after a factory"
                    + " output")
        Boolean highLevelInput) {

  /** Gains that can be set. */
  @Ascending(
      value = {"min_db", "max_db"},
      orEqual = true)
  public record Gain(
      @Schema(description = "Smallest gain, dB") @NotNull @DecimalMin("-100") @DecimalMax("80")
          Double minDb,
      @Schema(description = "Largest gain, dB") @NotNull @DecimalMin("-100") @DecimalMax("80")
          Double maxDb) {}

  /** Gains that can be set, by the input voltage that gives the largest clean output. */
  @Ascending(
      value = {"min_v", "max_v"},
      orEqual = true)
  public record Sensitivity(
      @Schema(description = "Most sensitive setting: smallest such input, V RMS")
          @NotNull
          @DecimalMin("0.001")
          @DecimalMax("200")
          Double minV,
      @Schema(description = "Least sensitive setting: largest such input, V RMS")
          @NotNull
          @DecimalMin("0.001")
          @DecimalMax("200")
          Double maxV) {}

  public boolean noiseKnown() {
    return inputNoiseUv != null || outputNoiseUv != null;
  }
}
