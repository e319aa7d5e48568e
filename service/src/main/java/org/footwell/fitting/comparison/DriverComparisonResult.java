package org.footwell.fitting.comparison;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Verdict;
import org.footwell.fitting.comparison.sides.ComparedChange;
import org.footwell.fitting.comparison.sides.ComparedPosition.Band;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;
import org.footwell.fitting.comparison.sides.ComparedPosition.Zone;
import org.footwell.fitting.comparison.sides.ComparedSide;

/** Factory parts and replacements side by side; what is not known is left out. */
public record DriverComparisonResult(
    @Schema(description = "Currency of all prices, as given") String priceCurrency,
    @Schema(description = "The whole vehicle") VehicleTotals totals,
    @Schema(description = "Positions in order of the request") List<PositionLine> positions,
    @Schema(description = "Positions of one zone and band together") List<GroupLine> groups,
    @Schema(description = "What comes in besides") List<AdditionLine> additions) {

  /** One position. */
  @Built
  public record PositionLine(
      @Schema(description = "What the place is called") String name,
      @Schema(description = "Where in the sound stage it plays") Zone zone,
      @Schema(description = "What part of the range it plays") Band band,
      @Schema(description = "Where its mass goes") MountedAt at,
      int driverCount,
      @Schema(description = "Frequency at which travel was held against the level, Hz")
          double displacementHz,
      @Schema(description = "Level at which the lowest useful frequency was judged, dB SPL")
          double reachLevelDbSpl,
      @Schema(description = "The factory part; absent where there was nothing") ComparedSide before,
      @Schema(description = "The replacement") ComparedSide after,
      @Schema(description = "What changes") ComparedChange change,
      @Schema(description = "Worst finding on the position") Verdict verdict) {

    PositionLine judged(Verdict worst) {
      return DriverComparisonResultPositionLineBuilder.builder()
          .name(name)
          .zone(zone)
          .band(band)
          .at(at)
          .driverCount(driverCount)
          .displacementHz(displacementHz)
          .reachLevelDbSpl(reachLevelDbSpl)
          .before(before)
          .after(after)
          .change(change)
          .verdict(worst)
          .build();
    }
  }

  /** Positions of one zone and band. */
  @Built
  public record GroupLine(
      @Schema(description = "Where in the sound stage it plays") Zone zone,
      @Schema(description = "What part of the range it plays") Band band,
      @Schema(description = "Cone area before, cm²; 0 where there was nothing")
          Double coneAreaBeforeCm2,
      @Schema(description = "Cone area after, cm²") Double coneAreaAfterCm2,
      @Schema(
              description =
                  "All its factory drivers at their largest clean level, each at 1 m, powers added,"
                      + " dB SPL")
          Double largestLevelBeforeDbSpl,
      @Schema(description = "The same with the replacements, dB SPL") Double largestLevelAfterDbSpl,
      @Schema(
              description =
                  "Change of that level, dB; absent where a position cannot be compared, at least"
                      + " this where limits_of_factory_unknown is true of one")
          Double levelChangeDb,
      @Schema(description = "Price of its replacements") BigDecimal price,
      @Schema(
              description =
                  "That price for each dB of change, to the cent; not where the gain of a position"
                      + " is only known to be at least something")
          BigDecimal pricePerDb) {}

  /** The whole vehicle. */
  @Built
  public record VehicleTotals(
      @Schema(description = "What comes in, additions too, less what goes out, g")
          Double massChangeG,
      @Schema(description = "The part of it that hangs on the doors, all together, g")
          Double doorMassChangeG,
      @Schema(description = "Price of all that comes in, additions too") BigDecimal price,
      @Schema(
              description =
                  "Largest clean level of the vehicle, dB, changes by at least this: the least"
                      + " change of any group that was there before, whatever their balance")
          Double levelChangeDb,
      @Schema(
              description =
                  "Price of all for each dB of that, to the cent; not where a position is new, nor"
                      + " where a gain is only known to be at least something")
          BigDecimal pricePerDb,
      @Schema(description = "Continuous power of all drivers, after over before, dB")
          Double continuousPowerDb,
      @Schema(description = "Peak power of all drivers, after over before, dB") Double peakPowerDb,
      @Schema(description = "Cone area of all drivers before, cm²") Double coneAreaBeforeCm2,
      @Schema(description = "Cone area of all drivers after, cm²") Double coneAreaAfterCm2,
      @Schema(description = "Air moved from rest to one side by all drivers before, cm³")
          Double displacementBeforeCm3,
      @Schema(description = "Air moved from rest to one side by all drivers after, cm³")
          Double displacementAfterCm3,
      @Schema(
              description =
                  "Lowest useful frequency of any position before, Hz, of those that have one")
          Double lowestUsefulBeforeHz,
      @Schema(
              description =
                  "Lowest useful frequency of any position after, Hz, of those that have one")
          Double lowestUsefulAfterHz) {}

  /** Something that comes in besides. */
  public record AdditionLine(
      @Schema(description = "What it is called") String name,
      @Schema(description = "Where its mass goes") MountedAt at,
      Double massG,
      @Schema(description = "Price") BigDecimal price,
      @Schema(description = "Whether it is heavy enough for the caution about restraint")
          boolean needsRestraint) {}
}
