package org.footwell.measured.balance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Ascending;
import org.footwell.measured.response.ChannelTake;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.LeftAndRight;
import org.footwell.measured.response.Measurement;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.PairedChannels;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.parts.LevelAt;
import org.footwell.parts.TargetCurve;

/** Recordings of every channel at every microphone position, and what their levels should be. */
@Built
@Ascending("calibration.*.frequency_hz")
@Ascending(
    value = {"from_hz", "to_hz"},
    orEqual = true)
@Keeps(JudgedBands.class)
public record LevelAndBalanceRequest(
    @Schema(description = "What the recordings are") @NotNull RecordedKind kind,
    @Schema(description = "The sweep that was played; with kind sweep only") PlayedSweep sweep,
    @Schema(
            description =
                "Channels of the system, each recorded alone, all with the same drive level and"
                    + " microphone gain")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull JudgedChannel> channels,
    @Schema(description = "Microphone positions around the listening position")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull MicrophonePosition> microphones,
    @Schema(description = "One entry for every channel and microphone position")
        @NotNull
        @Size(min = 1, max = 64)
        List<@NotNull ChannelTake> recordings,
    @Schema(description = "Channels that should be equally loud, such as left and right")
        @Size(max = 16)
        List<@NotNull LeftAndRight> pairs,
    @Schema(description = "The wanted curve; absent: flat") TargetCurve target,
    @Schema(description = "Which part of each impulse response counts") Gate gate,
    @Schema(
            description =
                "What the microphone shows too much at each frequency, dB; it is subtracted."
                    + " Straight over the logarithm of frequency between points, flat beyond")
        @Size(min = 1, max = 1000)
        List<@NotNull LevelAt> calibration,
    @Schema(description = "Middle of the lowest third octave to be told, nominal or exact, Hz")
        @DecimalMin("5")
        @DecimalMax("20000")
        Double fromHz,
    @Schema(
            description =
                "Middle of the highest third octave, Hz; what lies above 0.84 times half the sample"
                    + " rate is left out")
        @DecimalMin("5")
        @DecimalMax("80000")
        Double toHz)
    implements Measurement, PairedChannels {

  public LevelAndBalanceRequest {
    pairs = pairs == null ? List.of() : pairs;
    target = target == null ? TargetCurve.flat() : target;
    gate = gate == null ? Gate.standard() : gate;
    fromHz = fromHz == null ? Double.valueOf(20) : fromHz;
    toHz = toHz == null ? Double.valueOf(20_000) : toHz;
  }
}
