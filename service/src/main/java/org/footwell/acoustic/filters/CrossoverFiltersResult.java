package org.footwell.acoustic.filters;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Called;
import org.footwell.signal.Biquad;

/** Digital sections, what each way does, and what all of them sum to. */
public record CrossoverFiltersResult(
    @Schema(
            description =
                "Every section, way by way in the order of the signal: high-pass, low-pass,"
                    + " sections as given. Gain, polarity and delay of the way are not in them")
        List<DesignedSection> sections,
    @Schema(description = "What each way does, its place not counted") List<WayCurve> ways,
    @Schema(description = "All ways together, at the reference height if listening is given")
        Sum sum,
    @Schema(
            description =
                "Every two neighbouring ways of which one hands over to the other: a low-pass and a"
                    + " high-pass within two octaves, no way between them, and no third way 6.02 dB"
                    + " louder than each of them at the crossing")
        List<Handover> handovers,
    @Schema(description = "The sum at each further height of listening") List<AtHeight> heights) {

  /** A section as designed and as the device holds it. */
  public record DesignedSection(
      @Schema(description = "Name of the way it belongs to") String channel,
      @Schema(description = "JSON Pointer to the part of the request it comes from") String pointer,
      @Schema(description = "Coefficients as calculated") Biquad coefficients,
      @Schema(description = "Coefficients as rounded; none without rounding") Biquad rounded,
      @Schema(description = "Largest distance of a pole from the origin; stable below 1")
          double poleRadius,
      @Schema(description = "The same of the rounded section; none without rounding")
          Double roundedPoleRadius) {}

  /** One way: filters, gain, polarity and delay. */
  public record WayCurve(
      @Schema(description = "Name of the way") String id,
      @Schema(description = "Highest level within the range, dB") double highestDb,
      @Called("highest_at_hz") @Schema(description = "Where it is, Hz") double highestHz,
      @Schema(description = "The delay in samples; what is not whole the device will round")
          double delaySamples,
      @Schema(
              description =
                  "Largest change of level by rounding, signed, where the way is no more than 40 dB"
                      + " below its highest level: within the range, at the points listed, at 0 Hz"
                      + " and at half the sample rate, dB; none without rounding or when the"
                      + " rounded way is unstable")
          Double roundingErrorDb,
      @Called("rounding_error_at_hz") @Schema(description = "Where it is, Hz")
          Double roundingErrorHz,
      @Schema(description = "The curve") List<WayPoint> points) {}

  /** One frequency of a way. */
  public record WayPoint(
      double frequencyHz,
      @Schema(description = "Level, dB; -300 or more") double levelDb,
      @Schema(description = "Phase with polarity and delay, above -180 to 180 degrees")
          double phaseDeg,
      @Schema(description = "Group delay with the delay of the way, ms") double groupDelayMs,
      @Schema(
              description =
                  "Level with rounded coefficients, dB; none without rounding or when unstable")
          Double roundedLevelDb) {}

  /** All ways together. */
  @Built
  public record Sum(
      @Schema(description = "Start of the band that is judged, Hz") double bandFromHz,
      @Schema(description = "End of the band that is judged, Hz") double bandToHz,
      @Schema(description = "Highest level in the band, dB") double highestDb,
      @Called("highest_at_hz") @Schema(description = "Where it is, Hz") double highestHz,
      @Schema(description = "Lowest level in the band, dB; no more than 60 below the highest")
          double lowestDb,
      @Called("lowest_at_hz") @Schema(description = "Where it is, Hz") double lowestHz,
      @Schema(description = "Highest minus lowest, dB") double spreadDb,
      @Schema(description = "The same with one way inverted; none for a single way")
          List<Inverted> inverted,
      @Schema(description = "The curve") List<SumPoint> points) {}

  /** The sum with one way inverted against what was given. */
  public record Inverted(
      @Schema(description = "Name of the inverted way") String way,
      @Schema(description = "Highest minus lowest level in the band, dB; 60 at most")
          double spreadDb,
      @Schema(description = "Lowest level in the band, dB") double lowestDb,
      @Called("lowest_at_hz") @Schema(description = "Where it is, Hz") double lowestHz) {}

  /** One frequency of the sum. */
  public record SumPoint(
      double frequencyHz,
      @Schema(
              description =
                  "Level, dB; no more than 60 below that of the ways in phase, and -300 or more")
          double levelDb,
      @Schema(
              description =
                  "Phase, above -180 to 180 degrees; with listening, counted from the arrival of"
                      + " sound over the listening distance")
          double phaseDeg,
      @Schema(description = "Group delay, ms, counted likewise; none where all cancels")
          Double groupDelayMs) {}

  /** Two ways that meet. */
  @Built
  public record Handover(
      @Schema(description = "Name of the way with the low-pass") String lower,
      @Schema(description = "Name of the way with the high-pass") String upper,
      @Schema(description = "Where both are equally loud, Hz") double crossingHz,
      @Schema(description = "Level of each there, dB") double eachDb,
      @Schema(description = "Phase of the upper less that of the lower there, degrees")
          double phaseDifferenceDeg,
      @Schema(description = "Level of both together there, dB; no more than 60 below that in phase")
          double sumDb,
      @Schema(
              description =
                  "Start of the band judged, Hz: an octave around the crossing, less where"
                      + " the other corner of a band-pass is near")
          double bandFromHz,
      @Schema(description = "End of that band, Hz") double bandToHz,
      @Schema(
              description =
                  "Highest minus lowest level of both together in that band, their gains and"
                      + " distances evened out, dB; 60 at most")
          double spreadDb,
      @Schema(description = "The same with one of them inverted, dB") double invertedSpreadDb,
      @Schema(description = "Which polarity sums flatter") Better better,
      @Schema(
              description =
                  "Delay that sums flattest, ms: of the upper way when positive, of the lower when"
                      + " negative, added to what is given; 0 unless it gains 0.1 dB. Looked for"
                      + " within half a period of the crossing, and also around the delay with"
                      + " which both group delays agree, which is taken if it gains 0.5 dB")
          double bestDelayMs,
      @Schema(
              description =
                  "Whether one of them is inverted for that delay: -1 if so, else 1; for a delay it"
                      + " is only if that gains 0.5 dB")
          int bestPolarity,
      @Schema(description = "Highest minus lowest level with that delay and polarity, dB")
          double bestSpreadDb) {}

  /** Which polarity sums flatter. */
  public enum Better {
    /** As given. */
    AS_GIVEN,
    /** One of the two inverted. */
    INVERTED,
    /** Within 0.1 dB the same. */
    EITHER
  }

  /** The sum at another height. */
  public record AtHeight(
      @Schema(description = "Height above the reference height, m") double heightM,
      @Schema(description = "The same as an angle, degrees") double angleDeg,
      @Schema(
              description =
                  "Largest loss against the reference height in the band judged, dB; -60 at the"
                      + " most, above 0 where all is gain")
          double lossDb,
      @Schema(description = "Where it is, Hz") double lossHz,
      @Schema(description = "The curve") List<LevelPoint> points) {}

  /** A level at a frequency. */
  public record LevelPoint(
      double frequencyHz,
      @Schema(
              description =
                  "Level, dB; no more than 60 below that of the ways in phase, and -300 or more")
          double levelDb) {}
}
