package org.footwell.measured.sum;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;

/** How two channels sum, and what would sum better. */
@Built
public record LoudspeakerSumResult(
    @Schema(description = "Lower end of the band judged, Hz") double bandFromHz,
    @Schema(description = "Upper end, Hz") double bandToHz,
    @Schema(
            description =
                "Phase of the upper less that of the lower channel at the crossover, over all"
                    + " positions, degrees, above -180 to 180")
        double phaseDeg,
    @Schema(
            description =
                "Sum loss at the crossover by that phase, dB: against both in phase at equal level,"
                    + " -3.01 at 90 degrees, -100 or more")
        double lossAtCrossoverDb,
    @Schema(description = "Upper less lower level at the crossover, dB") double levelDifferenceDb,
    @Schema(description = "As set") Sum asSet,
    @Schema(description = "With the best delay and polarity") Sum best,
    @Schema(
            description =
                "The best with the upper channel's polarity the other way round than best")
        Sum otherPolarity,
    @Schema(description = "Channel to be delayed for the best; absent when none is") String delayed,
    @Schema(description = "One entry per microphone position, in the order given")
        List<Position> positions,
    @Schema(description = "The band, 24 points to the octave, over all positions")
        List<Point> points,
    @Schema(description = "Lowest frequency the gates can tell, Hz") double gateLimitHz) {

  /** One delay and polarity. */
  public record Sum(
      @Schema(description = "Delay added to the upper channel, ms; negative: to the lower")
          double delayMs,
      @Schema(description = "1 as set, -1 with the upper channel inverted") int polarity,
      @Schema(
              description =
                  "Loss over the band and all positions, dB: power of the sum against that of both"
                      + " in phase at every frequency, -100 or more")
          double lossDb) {}

  /** One microphone position. */
  public record Position(
      @Schema(description = "Id of the microphone position") String microphone,
      @Schema(description = "Phase of the upper less that of the lower at the crossover, degrees")
          double phaseDeg,
      @Schema(description = "Loss over the band as set, dB") double lossDb,
      @Schema(description = "Loss over the band with the best delay and polarity, dB")
          double bestLossDb) {}

  /** One frequency, all positions together. */
  public record Point(
      double frequencyHz,
      @Schema(description = "Level of the lower channel, dB") double lowerDb,
      @Schema(description = "Level of the upper channel, dB") double upperDb,
      @Schema(description = "Phase of the upper less that of the lower, degrees") double phaseDeg,
      @Schema(description = "Level of the sum as set, dB") double sumDb,
      @Schema(description = "Level of the sum with the best delay and polarity, dB")
          double bestSumDb,
      @Schema(description = "Level of both in phase, dB") double inPhaseDb) {}
}
