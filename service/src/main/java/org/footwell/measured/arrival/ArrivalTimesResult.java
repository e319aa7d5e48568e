package org.footwell.measured.arrival;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;

/** When everything arrives, and what to delay. */
@Built
public record ArrivalTimesResult(
    @Schema(description = "One entry per channel, in the order given")
        List<ChannelArrival> channels,
    @Schema(description = "One entry per recording, in the order given") List<Take> recordings,
    @Schema(
            description =
                "One entry per pair, in the order given; absent without pairs, without a time"
                    + " reference and where the sweep was not the one stated")
        List<Pair> pairs,
    @Schema(
            description =
                "Largest minus smallest arrival of the channels before delays are added, ms; absent"
                    + " without a time reference")
        Double spreadMs,
    @Schema(description = "The same with the delays on the steps of the processor, ms")
        Double remainingSpreadMs,
    @Schema(
            description =
                "How much longer than stated the sweep seems to have lasted, ms, by how compact the"
                    + " responses are: a clock of the recorder that is fast by 100 ppm makes 0.1 ms"
                    + " for every second of it. Absent without a sweep, and where no channel plays"
                    + " high enough to tell")
        Double sweepLongerMs,
    @Schema(description = "How far that may be off, ms, either way: 95 of 100 cases or more")
        Double sweepLongerUncertaintyMs,
    @Schema(description = "Speed of sound at the temperature given, m/s") double speedOfSoundMPerS,
    @Schema(description = "Sample rate of the recordings, Hz") double rateHz) {

  /** How an arrival was found. */
  public enum Method {
    /**
     * The band's phase slope: what is left of the response after the minimum-phase part is taken
     * out, which is flight and pure delay without the delay of loudspeaker and crossover.
     */
    EXCESS_PHASE,
    /** Peak of the envelope in the band: holds the delay of loudspeaker and crossover too. */
    ENVELOPE
  }

  /** One channel at the listening position. */
  @Built
  public record ChannelArrival(
      @Schema(description = "Id of the channel") String id,
      @Schema(
              description =
                  "Arrival at the listening position, ms: weighted mean over the microphone"
                      + " positions")
          double arrivalMs,
      @Schema(description = "The same as path, m; holds the latency of the chain if there is any")
          double distanceM,
      @Schema(description = "How far the arrival may be off, ms, either way: about 95 of 100 cases")
          double uncertaintyMs,
      @Schema(description = "Largest minus smallest arrival over the microphone positions, ms")
          double spreadMs,
      @Schema(description = "1 when a positive signal pushes outward first, -1 when inverted")
          int polarity,
      double polarityConfidence,
      @Schema(description = "Exact delay to add, ms; absent without a time reference")
          Double delayMs,
      @Schema(description = "The delay as path, mm") Double delayMm,
      @Schema(description = "Delay to add in whole samples of the processor") Integer delaySamples,
      @Schema(description = "Delay to add on the steps of the processor, ms") Double settingMs,
      @Schema(description = "What rounding to the step adds to the exact delay, ms")
          Double roundingErrorMs,
      @Schema(
              description =
                  "Delay of the channel in all, ms: what was set before and what is added, on the"
                      + " steps of the processor if one is given")
          Double absoluteSettingMs) {}

  /** Two channels held against each other below the lowest mode of the cabin. */
  public record Pair(
      @Schema(description = "Id of the left channel") String left,
      @Schema(description = "Id of the right channel") String right,
      @Schema(description = "1 when they play with each other, -1 when against each other")
          int polarity,
      @Schema(
              description =
                  "Size of what they have in common, 0 to 1: from 0.8 on the polarity is told")
          double likeness,
      @Schema(description = "Lower end of the band they were held against each other in, Hz")
          double lowHz,
      @Schema(description = "Upper end of that band, Hz") double highHz) {}

  /** One channel at one microphone position. */
  @Built
  public record Take(
      @Schema(description = "Id of the channel") String channel,
      @Schema(description = "Id of the microphone position") String microphone,
      @Schema(description = "Arrival after the time reference, ms") double arrivalMs,
      @Schema(description = "How far the arrival may be off, ms, either way: about 95 of 100 cases")
          double uncertaintyMs,
      @Schema(description = "How it was found") Method method,
      @Schema(description = "Arrival as path, m") double distanceM,
      @Schema(
              description =
                  "Peak of the envelope in the band, ms: later than the arrival by the delay of"
                      + " loudspeaker and crossover")
          double envelopeMs,
      @Schema(description = "Lower end of the band it was judged in, Hz") double bandLowHz,
      @Schema(description = "Upper end of that band, Hz") double bandHighHz,
      @Schema(description = "1 or -1") int polarity,
      double polarityConfidence,
      @Schema(
              description =
                  "Peak of the envelope over the RMS of the noise, both in the band, dB; at most"
                      + " 120")
          double signalToNoiseDb,
      @Schema(description = "Strongest later peak of the envelope over the first, dB; if any")
          Double reflectionDb,
      @Schema(description = "How much later that peak comes, ms") Double reflectionMs) {}
}
