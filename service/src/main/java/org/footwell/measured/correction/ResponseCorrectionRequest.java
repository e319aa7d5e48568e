package org.footwell.measured.correction;

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
import org.footwell.measured.response.ChannelTake;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.Measurement;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.parts.LevelAt;
import org.footwell.parts.TargetCurve;

/** Recordings of every channel at every microphone position, and what filters may do about them. */
@Built
@Ascending("calibration.*.frequency_hz")
@Keeps(CorrectedRanges.class)
public record ResponseCorrectionRequest(
    @Schema(description = "What the recordings are") @NotNull RecordedKind kind,
    @Schema(description = "The sweep that was played; with kind sweep only") PlayedSweep sweep,
    @Schema(description = "Channels to be corrected, each recorded alone")
        @NotNull
        @Size(min = 1, max = 8)
        List<@NotNull JudgedChannel> channels,
    @Schema(description = "Microphone positions around the listening position")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull MicrophonePosition> microphones,
    @Schema(description = "One entry for every channel and microphone position")
        @NotNull
        @Size(min = 1, max = 64)
        List<@NotNull ChannelTake> recordings,
    @Schema(description = "Sample rate of the processor the filters are for, Hz")
        @NotNull
        @DecimalMin("8000")
        @DecimalMax("768000")
        Double processorRateHz,
    @Schema(description = "The wanted curve; absent: flat") TargetCurve target,
    @Schema(description = "How many filters each channel may get and how far they may go")
        FilterLimits filters,
    @Schema(
            description =
                "Levels are means over one such part of an octave: 3 for third octaves, 12 for"
                    + " twelfths")
        @Min(1)
        @Max(24)
        Integer smoothingPerOctave,
    @Schema(
            description =
                "Where the standard deviation over the microphone positions, each about its own level"
                    + " in the range corrected, is above this, dB, nothing is boosted: a dip there"
                    + " moves from position to position")
        @DecimalMin("0.5")
        @DecimalMax("20")
        Double movingDipDb,
    @Schema(description = "Which part of each impulse response counts") Gate gate,
    @Schema(
            description =
                "What the microphone shows too much at each frequency, dB; it is subtracted."
                    + " Straight over the logarithm of frequency between points, flat beyond")
        @Size(min = 1, max = 1000)
        List<@NotNull LevelAt> calibration)
    implements Measurement {

  public ResponseCorrectionRequest {
    target = target == null ? TargetCurve.flat() : target;
    filters = filters == null ? FilterLimits.standard() : filters;
    smoothingPerOctave = smoothingPerOctave == null ? Integer.valueOf(6) : smoothingPerOctave;
    movingDipDb = movingDipDb == null ? Double.valueOf(3) : movingDipDb;
    gate = gate == null ? Gate.standard() : gate;
  }

  /** What filters may do. */
  @Built
  @Ascending(
      value = {"lowest_q", "highest_q"},
      orEqual = true)
  @Ascending({"from_hz", "to_hz"})
  public record FilterLimits(
      @Schema(description = "Most filters for a channel") @Min(1) @Max(20) Integer count,
      @Schema(
              description =
                  "Most that a filter, and all filters together, may lift, dB; 0 for cuts only")
          @DecimalMin("0")
          @DecimalMax("18")
          Double boostDb,
      @Schema(description = "Most that a filter may lower, dB, as a positive number")
          @DecimalMin("0")
          @DecimalMax("30")
          Double cutDb,
      @Schema(description = "Lowest quality factor") @DecimalMin("0.1") @DecimalMax("20")
          Double lowestQ,
      @Schema(description = "Highest quality factor") @DecimalMin("0.1") @DecimalMax("50")
          Double highestQ,
      @Schema(description = "Lowest centre of a filter, Hz") @DecimalMin("10") @DecimalMax("20000")
          Double fromHz,
      @Schema(description = "Highest centre of a filter, Hz") @DecimalMin("20") @DecimalMax("40000")
          Double toHz) {

    public FilterLimits {
      count = count == null ? Integer.valueOf(8) : count;
      boostDb = boostDb == null ? Double.valueOf(4) : boostDb;
      cutDb = cutDb == null ? Double.valueOf(12) : cutDb;
      lowestQ = lowestQ == null ? Double.valueOf(0.5) : lowestQ;
      highestQ = highestQ == null ? Double.valueOf(6) : highestQ;
      fromHz = fromHz == null ? Double.valueOf(20) : fromHz;
      toHz = toHz == null ? Double.valueOf(20_000) : toHz;
    }

    static FilterLimits standard() {
      return new FilterLimits(null, null, null, null, null, null, null);
    }
  }
}
