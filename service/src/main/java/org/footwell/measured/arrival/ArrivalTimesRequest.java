package org.footwell.measured.arrival;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needs;
import org.footwell.measured.response.LeftAndRight;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.PairedChannels;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.measured.response.RecordedSet;
import org.footwell.measured.response.Taken;
import org.footwell.parts.EvenOrder;
import org.footwell.parts.Filter;
import org.footwell.recording.Recording;

/** Recordings of every channel at every microphone position. */
@Built
@Needs(field = "pairs.*", beside = "cabin_length_m")
@Keeps(
    value = EvenOrder.class,
    of = {"channels.*.high_pass", "channels.*.low_pass"})
@Keeps(RecordedArrivals.class)
@Keeps(value = WideEnough.class, of = "channels.*.band")
public record ArrivalTimesRequest(
    @Schema(description = "What the recordings are") @NotNull RecordedKind kind,
    @Schema(description = "The sweep that was played; with kind sweep only") PlayedSweep sweep,
    @Schema(
            description =
                "What makes the times of the recordings comparable. Without anything, arrivals and"
                    + " polarities are still told, but no delays")
        @NotNull
        TimeReference timeReference,
    @Schema(description = "Channels of the system, each recorded alone")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull RecordedChannel> channels,
    @Schema(description = "Microphone positions around the listening position")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull MicrophonePosition> microphones,
    @Schema(description = "One entry for every channel and microphone position")
        @NotNull
        @Size(min = 1, max = 64)
        List<@NotNull Take> recordings,
    @Schema(description = "The processor that sets the delays; absent: exact delays only")
        Processor processor,
    @Schema(description = "Air temperature, °C: for delays and times as distances")
        Double temperatureC,
    @Schema(
            description =
                "Left and right channels that should play with each other: alike loudspeakers and"
                    + " filters, equally far from the front of the cabin. Below its lowest mode they"
                    + " are then held against each other, which tells whether one is inverted where"
                    + " modes hide the polarity of each")
        @Size(max = 16)
        List<@NotNull LeftAndRight> pairs,
    Double cabinLengthM)
    implements RecordedSet, PairedChannels {

  public ArrivalTimesRequest {
    pairs = pairs == null ? List.of() : pairs;
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
  }

  /** What makes times comparable. */
  public enum TimeReference {
    /** All recordings start at the same moment of playback, to the sample. */
    COMMON_START,
    /** Each has a second recording, made at the same time, of the signal before the processor. */
    LOOPBACK,
    /** Nothing: playback and recording started as they happened to. */
    NONE
  }

  /** One channel with what is known of it. */
  @Built
  public record RecordedChannel(
      @Schema(description = "Name, unlike any other channel's") @NotNull @Size(min = 1, max = 60)
          String id,
      @Schema(
              description =
                  "Band the channel plays; absent: it is found by itself, which takes a better"
                      + " signal-to-noise ratio")
          Band band,
      @Schema(
              description =
                  "High-pass filter in the channel when it was recorded: its phase is"
                      + " then taken out exactly")
          Filter highPass,
      @Schema(description = "Low-pass filter in the channel when it was recorded") Filter lowPass,
      @Schema(description = "Delay that was set in the channel when it was recorded, ms")
          Double chainDelayMs)
      implements RecordedSet.Identified {

    public RecordedChannel {
      chainDelayMs = chainDelayMs == null ? Double.valueOf(0) : chainDelayMs;
    }
  }

  /** A band of frequencies. */
  public record Band(
      @Schema(description = "Lower end, Hz") @NotNull @DecimalMin("10") @DecimalMax("20000")
          Double lowHz,
      @Schema(description = "Upper end, Hz, at least 1.25 times the lower")
          @NotNull
          @DecimalMin("20")
          @DecimalMax("40000")
          Double highHz) {}

  /** What one microphone position heard of one channel. */
  public record Take(
      @Schema(description = "Id of the channel that played") @NotNull @Size(min = 1, max = 60)
          String channel,
      @Schema(description = "Id of the microphone position") @NotNull @Size(min = 1, max = 60)
          String microphone,
      @Schema(description = "What was recorded") @NotNull Recording recording,
      @Schema(description = "What was recorded of the loopback; with time_reference loopback only")
          Recording loopback)
      implements Taken {}

  /** What sets the delays. */
  @ExactlyOne({"rate_hz", "step_ms"})
  public record Processor(
      @Schema(description = "Sample rate, Hz, where delays are set in samples")
          @DecimalMin("8000")
          @DecimalMax("384000")
          Double rateHz,
      @Schema(description = "Smallest step of a delay, ms") @DecimalMin("0.0001") @DecimalMax("10")
          Double stepMs,
      Double maximumDelayMs) {}
}
