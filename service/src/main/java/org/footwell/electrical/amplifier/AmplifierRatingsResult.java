package org.footwell.electrical.amplifier;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;

/** What published ratings say of an amplifier, and whether they agree with one another. */
@Built
public record AmplifierRatingsResult(
    @Schema(
            description =
                "RMS voltage without load of the source behind the ratings as stated, V; absent"
                    + " where they are power-limited or have no source")
        Double openCircuitV,
    @Schema(
            description =
                "Droop of that source per ampere, ohm; of both halves when the ratings are"
                    + " bridged; absent as open_circuit_v is")
        Double sagOhm,
    @Schema(description = "What the ratings look like") RatingsFit.Look character,
    @Schema(
            description =
                "Root mean square of the residuals, dB of voltage; with more than two ratings")
        Double residualRmsDb,
    @Schema(description = "Largest residual either way, dB of voltage; with more than two ratings")
        Double residualLargestDb,
    @Schema(description = "The ratings as clean powers, by rising load") List<Rated> rated,
    @Schema(description = "How power grows from each rated load to the next below it")
        List<Growth> growth,
    @Schema(description = "Clean power at every load and supply asked for, single and bridged")
        List<Prediction> predictions,
    @Schema(description = "Published bridged powers against the single channels; when given")
        List<Bridge> bridge) {

  /** One rating against the source behind all. */
  public record Rated(
      double loadOhm,
      @Schema(description = "Clean power the rating amounts to, W") double cleanPowerW,
      @Schema(description = "Power of the fitted source there, W; absent without a source")
          Double fittedPowerW,
      @Schema(
              description =
                  "Voltage of the rating over that of the source, dB; positive means the rating is"
                      + " above it; absent without a source")
          Double residualDb) {}

  /** How power grows into a lower load. */
  public record Growth(
      @Schema(description = "The higher rated load, ohm") double fromLoadOhm,
      @Schema(description = "The next lower rated load, ohm") double toLoadOhm,
      @Schema(description = "Power into the lower over power into the higher load")
          double powerRatio,
      @Schema(description = "The same per halving of the load: 2 for a supply that does not sag")
          double powerRatioPerHalving) {}

  /** Clean power into one load at one supply. */
  public record Prediction(
      double loadOhm,
      double supplyV,
      @Schema(description = "Whether two channels drive the load as a bridge") boolean bridged,
      @Schema(description = "Clean sine power to count on, W") double cleanPowerW,
      @Schema(description = "Smallest likely clean power, W") double cleanPowerLowW,
      @Schema(description = "Largest likely clean power, W") double cleanPowerHighW,
      @Schema(description = "Whether the load lies beyond the rated ones, so that bounds matter")
          boolean outsideRatedLoads) {}

  /** One published bridged power against two single channels. */
  public record Bridge(
      @Schema(description = "Load across the bridge, ohm") double loadOhm,
      @Schema(description = "Clean power the published figure amounts to, W") double publishedW,
      @Schema(description = "Clean power of two single channels on half the load each, W")
          double expectedW,
      @Schema(description = "Smallest such power the single ratings allow, W") double expectedLowW,
      @Schema(description = "Largest such power the single ratings allow, W") double expectedHighW,
      @Schema(
              description =
                  "Published over expected power, dB; positive means more than the single channels"
                      + " promise")
          double differenceDb) {}
}
