package org.footwell.measured.balance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** How loud every channel is, and what evens them out. */
public record LevelAndBalanceResult(
    @Schema(description = "One entry per channel, in the order given") List<ChannelLevel> channels,
    @Schema(description = "Third octaves of every channel, channel by channel") List<Band> bands,
    @Schema(description = "One entry per pair, in the order given") List<Pair> pairs,
    @Schema(description = "The channel that is left as it is") String quietest,
    @Schema(description = "Most that a channel is turned down, dB, 0 or less") double largestTrimDb,
    @Schema(
            description =
                "What the trims cost in loudness at full drive, dB, 0 or more: powers of all"
                    + " channels in the bands they are judged by, added before over after")
        double headroomCostDb,
    @Schema(description = "Lowest frequency the gates can tell, Hz") double gateLimitHz,
    @Schema(description = "Sample rate of the recordings, Hz") double rateHz) {

  /** One channel. */
  public record ChannelLevel(
      @Schema(description = "Id of the channel") String id,
      @Schema(description = "Middle of the lowest third octave it is judged by, Hz")
          double bandFromHz,
      @Schema(description = "Middle of the highest, Hz") double bandToHz,
      @Schema(description = "Mean of its third octaves, dB") double levelDb,
      @Schema(
              description =
                  "Mean by which its third octaves stand above the wanted curve as given, dB; only"
                      + " differences between channels count")
          double overTargetDb,
      @Schema(description = "Gain that evens it out, dB: 0 or less, 0 for the quietest")
          double trimDb,
      @Schema(
              description =
                  "RMS of what its third octaves are off the wanted curve when trimmed, dB, the"
                      + " curve set to the quietest channel")
          double errorDb) {}

  /** One third octave of one channel. */
  public record Band(
      @Schema(description = "Id of the channel") String channel,
      @Schema(description = "Exact mid-band frequency by IEC 61260, base ten, Hz")
          double frequencyHz,
      @Schema(
              description =
                  "Mean of |H|² over the band and the weighted microphone positions, dB; 0 for a"
                      + " response of 1; -300 or more")
          double levelDb,
      @Schema(
              description =
                  "Standard deviation of the level over the microphone positions, dB; 0 for a"
                      + " single one")
          double spreadDb,
      @Schema(description = "How far it stands above the noise, dB, at most 120")
          double signalToNoiseDb,
      @Schema(description = "Level with the trim, dB") double trimmedDb,
      @Schema(description = "The wanted curve, set to the quietest channel, dB") double targetDb,
      @Schema(description = "Whether the channel is judged by it") boolean judged) {}

  /** Two channels against each other, in the bands both are judged by. */
  public record Pair(
      @Schema(description = "Id of the left channel") String left,
      @Schema(description = "Id of the right channel") String right,
      @Schema(description = "Mean of left less right, dB; absent without a common band")
          Double differenceDb,
      @Schema(description = "The same with the trims, dB") Double trimmedDifferenceDb,
      @Schema(description = "Largest difference of a third octave with the trims, signed, dB")
          Double largestDifferenceDb,
      @Schema(description = "Where it is, Hz") Double largestDifferenceHz) {}
}
