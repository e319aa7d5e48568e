package org.footwell.measured.sum;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.measured.response.ChannelTake;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.Measurement;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.measured.response.RecordedSet;

/** Recordings of two channels that meet, with a common start of time. */
@Built
public record LoudspeakerSumRequest(
    @Schema(description = "What the recordings are") @NotNull RecordedKind kind,
    @Schema(description = "The sweep that was played; with kind sweep only") PlayedSweep sweep,
    @Schema(
            description =
                "The two channels, the lower first, each recorded alone with its filters, delay and"
                    + " level as set. All recordings must start at the same moment of playback, to"
                    + " the sample")
        @NotNull
        @Size(min = 2, max = 2)
        List<@NotNull SummedChannel> channels,
    @Schema(description = "Microphone positions around the listening position")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull MicrophonePosition> microphones,
    @Schema(description = "One entry for every channel and microphone position")
        @NotNull
        @Size(min = 2, max = 64)
        List<@NotNull ChannelTake> recordings,
    @Schema(description = "Frequency at which one hands over to the other, Hz")
        @NotNull
        @DecimalMin("20")
        @DecimalMax("15000")
        Double crossoverHz,
    @Schema(
            description =
                "Octaves to either side of the crossover that are judged; 1 reaches from half to"
                    + " twice its frequency")
        @DecimalMin("0.1")
        @DecimalMax("2")
        Double octaves,
    @Schema(
            description =
                "Largest delay to be tried, ms, either way; absent: one period of the crossover")
        @DecimalMin("0.01")
        @DecimalMax("50")
        Double delayRangeMs,
    @Schema(
            description =
                "Which part of each impulse response counts, set by the strongest sample of the"
                    + " two channels that comes first")
        Gate gate)
    implements Measurement {

  public LoudspeakerSumRequest {
    octaves = octaves == null ? Double.valueOf(1) : octaves;
    delayRangeMs =
        delayRangeMs == null && crossoverHz != null && crossoverHz > 0
            ? Double.valueOf(1000 / crossoverHz)
            : delayRangeMs;
    gate = gate == null ? Gate.standard() : gate;
  }

  /** One channel. */
  public record SummedChannel(
      @Schema(description = "Name, unlike the other's") @NotNull @Size(min = 1, max = 60) String id)
      implements RecordedSet.Identified {}
}
