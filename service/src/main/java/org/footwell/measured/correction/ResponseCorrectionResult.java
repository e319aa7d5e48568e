package org.footwell.measured.correction;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.signal.Biquad;
import org.footwell.signal.SectionKind;

/** Filters for every channel, and what they do. */
public record ResponseCorrectionResult(
    @Schema(description = "One entry per channel, in the order given")
        List<ChannelCorrection> channels,
    @Schema(
            description =
                "The filters, channel by channel and rising in frequency; kind, frequency, q and"
                    + " gain as crossover-filters takes them, coefficients as it gives them")
        List<Section> sections,
    @Schema(description = "Error by octaves, channel by channel") List<Octave> octaves,
    @Schema(description = "The curves, channel by channel, 24 points to the octave")
        List<Point> points,
    @Schema(description = "Lowest frequency the gates can tell, Hz") double gateLimitHz) {

  /** One channel. */
  @Built
  public record ChannelCorrection(
      @Schema(description = "Id of the channel") String id,
      @Schema(description = "Lowest frequency corrected, Hz") double fromHz,
      @Schema(description = "Highest frequency corrected, Hz") double toHz,
      @Schema(description = "Number of filters used") int filterCount,
      @Schema(
              description =
                  "RMS of the level less the wanted curve from lowest to highest, dB: as measured")
          double errorBeforeDb,
      @Schema(description = "The same with the filters, dB, as predicted") double errorAfterDb,
      @Schema(
              description =
                  "What the filters lift at most at any frequency, dB, 0 or more: turn the signal"
                      + " down by this before them")
          double headroomDb,
      @Schema(description = "Where that is, Hz; absent when nothing is lifted") Double headroomHz,
      @Schema(
              description =
                  "Level the wanted curve was set to, dB: what is added to it as given, the median"
                      + " of level less curve where boosts are allowed")
          double targetOffsetDb,
      @Schema(
              description =
                  "Share of the range, counted in octaves, in which nothing may be boosted")
          double noBoostShare) {}

  /** One filter. */
  public record Section(
      @Schema(description = "Id of the channel") String channel,
      @Schema(description = "Kind of section") SectionKind kind,
      @Schema(description = "Centre, Hz") double frequencyHz,
      @Schema(
              description =
                  "Quality factor: frequency over the bandwidth between the points of half the gain"
                      + " in dB")
          double q,
      @Schema(description = "Gain, dB") double gainDb,
      @Schema(description = "Coefficients at the rate of the processor") Biquad coefficients,
      @Schema(description = "Largest distance of a pole from the origin; stable below 1")
          double poleRadius) {}

  /** Error of one channel in one octave. */
  public record Octave(
      @Schema(description = "Id of the channel") String channel,
      @Schema(description = "Exact mid-band frequency by IEC 61260, base ten, Hz")
          double frequencyHz,
      @Schema(
              description =
                  "RMS of the level less the wanted curve, dB, as measured; of what lies in the"
                      + " range corrected")
          double errorBeforeDb,
      @Schema(description = "The same with the filters, dB") double errorAfterDb) {}

  /** One frequency of one channel. */
  public record Point(
      @Schema(description = "Id of the channel") String channel,
      double frequencyHz,
      @Schema(description = "Mean over the weighted microphone positions, by power, dB")
          double levelDb,
      @Schema(
              description =
                  "Standard deviation over the microphone positions, each about its own level in"
                      + " the range corrected, dB; 0 for a single one")
          double spreadDb,
      @Schema(description = "The wanted curve, dB") double targetDb,
      @Schema(description = "What the filters do, dB") double correctionDb,
      @Schema(description = "Level with the filters, dB, as predicted") double correctedDb,
      @Schema(description = "Whether a boost is allowed here") boolean boostAllowed) {}
}
