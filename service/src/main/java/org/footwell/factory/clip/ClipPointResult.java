package org.footwell.factory.clip;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.factory.clip.ClipPointRequest.OutputLoad;

/** The highest clean volume step and what to set by it. */
@Built
public record ClipPointResult(
    @Schema(description = "Highest clean volume step; absent if none is") Integer cleanStep,
    @Schema(description = "Distortion there, harmonics over fundamental, percent")
        Double cleanDistortionPercent,
    @Schema(
            description =
                "RMS voltage of the tone at the output there, V, terminals as terminals says")
        Double cleanOutputV,
    @Schema(description = "Whether voltages are for open or loaded terminals") OutputLoad terminals,
    @Schema(description = "Power into the load there, W") Double cleanPowerW,
    @Schema(description = "First volume step above it that is not clean") Integer uncleanStep,
    @Schema(description = "Distortion there, percent") Double uncleanDistortionPercent,
    @Schema(description = "How both halves clip, at the first step that is not clean")
        Clipping clipping,
    @Schema(
            description =
                "Highest volume step at which a digital full-scale sine is clean; needs tone_dbfs"
                    + " and voltages")
        Integer fullScaleStep,
    @Schema(
            description =
                "Input sensitivity to set in what follows: RMS voltage of a digital full-scale sine"
                    + " at full_scale_step, V")
        Double inputSensitivityV,
    @Schema(description = "Highest frequency whose harmonics counted, Hz; of captures only")
        Double bandEdgeHz,
    @Schema(description = "All volume steps, rising") List<StepFigures> steps) {

  /** How both halves of the wave clip. */
  public enum Clipping {
    /** Alike: odd harmonics only. */
    SYMMETRIC,
    /** One half before the other. */
    ASYMMETRIC,
    /** Not clipped, or nothing to tell it by. */
    UNKNOWN
  }

  /** One volume step. */
  @Built
  public record StepFigures(
      int volumeStep,
      double distortionPercent,
      @Schema(description = "Whether that is within the limit") boolean clean,
      @Schema(description = "Even harmonics over fundamental, percent") Double evenPercent,
      @Schema(description = "Odd harmonics over fundamental, percent") Double oddPercent,
      @Schema(description = "Second harmonic over fundamental, percent") Double secondPercent,
      @Schema(description = "Third harmonic over fundamental, percent") Double thirdPercent,
      @Schema(description = "Noise and hum in the band over fundamental, percent")
          Double noisePercent,
      @Schema(
              description =
                  "Frequency of the mains whose hum is seen, 50 or 60 Hz; absent where none is")
          Double humHz,
      @Schema(description = "That hum with its multiples over fundamental, percent")
          Double humPercent,
      @Schema(description = "Less distortion than this cannot be told from the noise, percent")
          Double floorPercent,
      @Schema(description = "Tracked frequency of the tone, Hz") Double toneHz,
      @Schema(description = "How many harmonics lie in the band") Integer harmonicCount,
      @Schema(description = "RMS of the tone, dB over the largest sine the recorder can hold")
          Double recordedLevelDb,
      @Schema(description = "RMS voltage of the tone at the output, V") Double outputV,
      @Schema(description = "Rise of the tone over the step before, dB") Double riseDb) {}
}
