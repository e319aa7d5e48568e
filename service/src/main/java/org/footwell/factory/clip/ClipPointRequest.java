package org.footwell.factory.clip;

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
import org.footwell.calculation.rule.Unique;
import org.footwell.recording.Recording;

/** A sine at several volume steps. */
@Built
@ExactlyOne({"captures", "readings"})
@AtMostOne({"readings", "tone_hz"})
@AtMostOne({"readings", "full_scale_v"})
@Unique("captures.*.volume_step")
@Unique("readings.*.volume_step")
@Keeps(LoadAtTerminals.class)
@Keeps(CapturedTone.class)
public record ClipPointRequest(
    @Schema(
            description =
                "Captures of the output, one for each volume step, all with the same gain of the"
                    + " recorder and the tone all through")
        @Size(min = 1, max = 64)
        List<@NotNull Capture> captures,
    @Schema(description = "What an analyser showed at each volume step") @Size(min = 1, max = 200)
        List<@NotNull Reading> readings,
    @Schema(
            description =
                "About what frequency the tone has, Hz, within 5 %; absent: the strongest line is"
                    + " taken")
        @DecimalMin("20")
        @DecimalMax("20000")
        Double toneHz,
    @Schema(
            description =
                "Level of the tone in the recording that was played, dBFS: 0 is the largest sine it"
                    + " can hold. Needed for the input sensitivity")
        @DecimalMin("-60")
        @DecimalMax("0")
        Double toneDbfs,
    @Schema(description = "Highest frequency whose harmonics count, Hz")
        @DecimalMin("100")
        @DecimalMax("90000")
        Double bandEdgeHz,
    @Schema(description = "Harmonics over fundamental that still count as clean, percent")
        @DecimalMin("0.01")
        @DecimalMax("50")
        Double limitPercent,
    @Schema(
            description =
                "Peak voltage at the recorder's input that makes a sample of 1, V; absent: no"
                    + " voltages are given")
        @DecimalMin("0.001")
        @DecimalMax("1000")
        Double fullScaleV,
    @Schema(
            description =
                "Volts at the output per volt at the recorder's input: 10 for a divider by ten")
        @DecimalMin("0.001")
        @DecimalMax("10000")
        Double probeRatio,
    @Schema(description = "What hangs on the output while it is measured") @NotNull
        OutputLoad terminals,
    @Schema(description = "The load, ohm; for the clean power. With terminals loaded")
        Double loadOhm,
    @Schema(
            description =
                "Whether it is measured between the two terminals of the output with a floating or"
                    + " differential instrument; absent: unknown")
        Boolean measuredDifferentially,
    @Schema(
            description =
                "Whether both terminals are driven, neither on ground, as factory outputs usually"
                    + " are")
        Boolean bridged) {

  public ClipPointRequest {
    bandEdgeHz = bandEdgeHz == null ? Double.valueOf(20_000) : bandEdgeHz;
    limitPercent = limitPercent == null ? Double.valueOf(1) : limitPercent;
    probeRatio = probeRatio == null ? Double.valueOf(1) : probeRatio;
    bridged = bridged == null ? Boolean.TRUE : bridged;
  }

  /** One capture. */
  public record Capture(
      @NotNull Integer volumeStep,
      @Schema(description = "The output at this step") @NotNull Recording recording) {}

  /** What an analyser showed. */
  @Needs(field = "positive_peak_v", beside = "negative_peak_v")
  @Needs(field = "negative_peak_v", beside = "positive_peak_v")
  public record Reading(
      @NotNull Integer volumeStep,
      @Schema(description = "Harmonics over fundamental, percent; not with noise") @NotNull
          Double distortionPercent,
      @Schema(description = "RMS voltage at the output, V") @DecimalMin("0.0001") @DecimalMax("500")
          Double outputV,
      @Schema(
              description =
                  "Height of the upper peak above the mean, V, for whether clipping is symmetric")
          @DecimalMin("0.0001")
          @DecimalMax("1000")
          Double positivePeakV,
      @Schema(description = "Depth of the lower peak below the mean, V")
          @DecimalMin("0.0001")
          @DecimalMax("1000")
          Double negativePeakV) {}

  /** What hangs on the output. */
  public enum OutputLoad {
    /** Nothing but the instrument. */
    OPEN,
    /** The loudspeaker or a resistor for it. */
    LOADED
  }
}
