package org.footwell.acoustic.alignment;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;

/**
 * When a channel was heard at a microphone position: an entry of {@code recordings} as arrival-times
 * gives it. What is not used is taken too, so that nothing has to be taken out.
 */
@Built
public record MeasuredArrival(
    @Schema(description = "Name of the channel") @NotNull @Size(min = 1, max = 60) String channel,
    @Schema(description = "Id of the microphone position") @NotNull @Size(min = 1, max = 60)
        String microphone,
    @Schema(
            description =
                "Arrival, ms, from the same moment for all: path and whatever delay is in the chain")
        @NotNull
        Double arrivalMs,
    @Schema(description = "How far it may be off, ms, either way")
        @DecimalMin("0")
        @DecimalMax("60000")
        Double uncertaintyMs,
    @Schema(description = "How it was found; absent: by the excess phase") Method method,
    @Schema(description = "Arrival as path, m; not used") @DecimalMin("-1000") @DecimalMax("30000")
        Double distanceM,
    @Schema(description = "Peak of the envelope, ms; not used")
        @DecimalMin("-1000")
        @DecimalMax("60000")
        Double envelopeMs,
    @Schema(description = "Lower end of the band it was judged in, Hz; not used")
        @DecimalMin("1")
        @DecimalMax("96000")
        Double bandLowHz,
    @Schema(description = "Upper end of that band, Hz; not used")
        @DecimalMin("1")
        @DecimalMax("96000")
        Double bandHighHz,
    @Schema(
            description =
                "1 or -1 as measured, compared with the polarity of the channel; absent: not compared")
        Integer polarity,
    @Schema(description = "How sure the polarity is: 0 a guess, 1 certain; absent: certain")
        Double polarityConfidence,
    @Schema(description = "Signal over noise, dB; not used") @DecimalMin("-200") @DecimalMax("200")
        Double signalToNoiseDb,
    @Schema(description = "Strongest later peak over the first, dB; not used")
        @DecimalMin("-200")
        @DecimalMax("200")
        Double reflectionDb,
    @Schema(description = "How much later that comes, ms; not used")
        @DecimalMin("0")
        @DecimalMax("60000")
        Double reflectionMs) {

  /** From here on a measured polarity was right in all trials but a few, see arrival-times. */
  private static final double SURE = 0.5;

  public MeasuredArrival {
    method = method == null ? Method.EXCESS_PHASE : method;
    polarityConfidence = polarityConfidence == null ? Double.valueOf(1) : polarityConfidence;
  }

  /** Whether it surely contradicts a polarity. */
  boolean contradicts(int stated) {
    return polarity != null && polarity != stated && polarityConfidence >= SURE;
  }

  /** How an arrival was found. */
  public enum Method {
    /** Without the delay of loudspeaker and filters. */
    EXCESS_PHASE,
    /** The peak of the envelope, with that delay. */
    ENVELOPE
  }
}
