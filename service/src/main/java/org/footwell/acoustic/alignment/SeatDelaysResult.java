package org.footwell.acoustic.alignment;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;

/** How long each channel waits, and what that leaves. */
@Built
public record SeatDelaysResult(
    @Schema(description = "One entry per channel, in the order given") List<ChannelDelay> channels,
    @Schema(description = "One entry per seat, in the order given") List<Seat> seats,
    @Schema(
            description =
                "One entry per channel that is the lower one of crossovers at incoherent_above_hz or"
                    + " below: how it is moved so that it adds there, at the seat that counts most")
        List<Match> matches,
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
                  "Arrival before any delay is added, ms: path and chain; of several listeners the"
                      + " weighted mean")
          double arrivalMs,
      @Schema(
              description =
                  "Delay by flight times alone, ms: all arrives together then. It is what to set if"
                      + " crossovers are to be matched by measurement")
          double flightDelayMs,
      @Schema(
              description =
                  "Exact delay to add, ms: that of flight time, moved where the channel meets others"
                      + " in the bass, and all together so that the smallest is 0")
          double delayMs,
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

  /**
   * One seat. All spreads are the largest minus the smallest arrival; of two ears, the worse. What a
   * channel was moved for its crossovers is not counted.
   */
  public record Seat(
      @Schema(description = "Name of the seat") String name,
      @Schema(description = "Arrival spread with no delay added, ms") double unalignedSpreadMs,
      @Schema(description = "Arrival spread left, ms, rounding included if a processor is given")
          double spreadMs,
      @Schema(description = "Arrival spread with these settings at -20 °C, ms") double coldSpreadMs,
      @Schema(description = "Arrival spread with these settings at 60 °C, ms")
          double hotSpreadMs) {}

  /** A lower channel at its crossovers of the bass. */
  public record Match(
      @Schema(description = "Name of the channel below") String lower,
      @Schema(description = "Channels above it; those of one frequency are heard together")
          List<Upper> uppers,
      @Schema(description = "Name of the seat it is matched for: the one that counts most")
          String seat,
      @Schema(description = "With the polarity given: what is set") MatchedSum asSet,
      @Schema(description = "With the lower channel inverted against that: what could be set")
          MatchedSum inverted,
      @Schema(
              description =
                  "Whether to invert the lower channel and ask again: it then loses at least 1 dB"
                      + " less, or no more and lies nearer to flight time")
          boolean inversionAdvised) {}

  /** A channel above another. */
  public record Upper(
      @Schema(description = "Name of the channel above") String name,
      @Schema(description = "Crossover frequency, Hz") double frequencyHz) {}

  /**
   * What one polarity gives. Losses are 20·lg of the pressure of all channels that meet, over that of
   * all in phase, where that is lowest within half an octave of the crossover; from two octaves below
   * it where an upper channel has no high-pass.
   */
  public record MatchedSum(
      @Schema(
              description =
                  "By how much the lower channel comes later than by flight time, ms; negative:"
                      + " earlier")
          double movedMs,
      @Schema(description = "Largest loss against all in phase, dB: 0 or below, at least -100")
          double largestLossDb,
      @Schema(description = "What flight time alone would lose so, dB: 0 or below, at least -100")
          double flightLossDb,
      @Schema(
              description =
                  "Whether less might be lost beyond half a period from flight time, where the search"
                      + " ends")
          boolean atWindowEdge) {}

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
