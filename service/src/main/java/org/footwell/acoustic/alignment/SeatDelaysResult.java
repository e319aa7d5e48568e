package org.footwell.acoustic.alignment;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;

/** How long each channel waits, and what that leaves. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record SeatDelaysResult(
    @Schema(description = "One entry per channel, in the order given") List<ChannelDelay> channels,
    @Schema(description = "One entry per seat, in the order given") List<Seat> seats,
    @Schema(description = "One entry per crossover and seat, in the order given")
        List<Crossover> crossovers,
    @Schema(description = "Speed of sound at the temperature given, m/s") double speedOfSoundMPerS,
    @Schema(description = "Largest arrival spread left at any seat, ms") double spreadMs,
    @Schema(description = "The same with these settings at -20 °C, ms") double coldSpreadMs,
    @Schema(description = "The same with these settings at 60 °C, ms") double hotSpreadMs,
    @Schema(
            description =
                "Largest change, from -20 to 60 °C, of the time between the arrivals of two"
                    + " channels at one seat, ms")
        double driftMs) {

  /** One channel. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  @Built
  public record ChannelDelay(
      @Schema(description = "Name of the channel") String name,
      @Schema(
              description =
                  "Distance to the listener, m; of several the weighted mean. From measured arrivals"
                      + " it holds the latency of the chain")
          double distanceM,
      @Schema(
              description =
                  "Arrival before any delay is added, ms: path, chain and filters; of several"
                      + " listeners the weighted mean")
          double arrivalMs,
      @Schema(
              description =
                  "Filter delay counted for the channel, ms: through the crossovers stated,"
                      + " relative to its highest partner, or else that of its low-pass at low"
                      + " frequencies. Negative where the partner is delayed more")
          double filterDelayMs,
      @Schema(description = "Delay of the channel's own low-pass at low frequencies, ms")
          Double lowPassDelayMs,
      @Schema(description = "Exact delay to add, ms") double delayMs,
      @Schema(description = "The delay as path, mm") double pathMm,
      @Schema(description = "Delay to add in samples, on the steps of the processor")
          Double delaySamples,
      @Schema(description = "Delay to add on the steps of the processor, ms") Double settingMs,
      @Schema(
              description =
                  "Delay of the channel in all, ms: chain delay and what is added, on the steps of"
                      + " the processor if one is given")
          double absoluteSettingMs,
      @Schema(description = "What rounding adds to the exact delay, microseconds")
          Double roundingErrorUs,
      @Schema(
              description =
                  "Level trim for the distance law, dB; 0 for the quietest channel, and for all with"
                      + " measured arrivals")
          double trimDb) {}

  /** One seat. All spreads are the largest minus the smallest arrival; of two ears, the worse. */
  public record Seat(
      @Schema(description = "Name of the seat") String name,
      @Schema(description = "Arrival spread with no delay added, ms") double unalignedSpreadMs,
      @Schema(description = "Arrival spread left, ms, rounding included if a processor is given")
          double spreadMs,
      @Schema(description = "Arrival spread with these settings at -20 °C, ms") double coldSpreadMs,
      @Schema(description = "Arrival spread with these settings at 60 °C, ms")
          double hotSpreadMs) {}

  /** One crossover as one seat hears it; of two ears, the worse. */
  public record Crossover(
      @Schema(description = "Name of the channel below") String lower,
      @Schema(description = "Name of the channel above") String upper,
      @Schema(description = "Crossover frequency, Hz") double frequencyHz,
      @Schema(description = "Name of the seat") String seat,
      @Schema(
              description =
                  "Phase of the lower channel minus that of the upper, degrees, above -180 to 180:"
                      + " path, chain, setting, filters and polarity; positive if the lower leads")
          double phaseErrorDeg,
      @Schema(
              description =
                  "Sum of both against both in phase at equal level, dB: 0 in phase, -3.01 at 90"
                      + " degrees; no less than -100")
          double sumLossDb) {}
}
