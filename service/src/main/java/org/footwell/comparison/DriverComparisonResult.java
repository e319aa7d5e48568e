package org.footwell.comparison;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.footwell.calculation.Verdict;
import org.footwell.comparison.ComparedPosition.Band;
import org.footwell.comparison.ComparedPosition.MountedAt;
import org.footwell.comparison.ComparedPosition.Zone;

/** Factory parts and replacements side by side; what is not known is left out. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record DriverComparisonResult(
    @Schema(description = "Currency of all prices, as given") String priceCurrency,
    @Schema(description = "The whole vehicle") VehicleTotals totals,
    @Schema(description = "Positions in order of the request") List<PositionLine> positions,
    @Schema(description = "Positions of one zone and band together") List<GroupLine> groups,
    @Schema(description = "What comes in besides") List<AdditionLine> additions) {

  /** What holds the largest clean level. */
  public enum LevelLimit {
    /** The power the driver bears continuously. */
    @JsonProperty("thermal")
    THERMAL("the power it bears"),
    /** The travel of the cone. */
    @JsonProperty("displacement")
    DISPLACEMENT("the travel of its cone"),
    /** The amplifier's clean power. */
    @JsonProperty("amplifier")
    AMPLIFIER("the amplifier");

    private final String words;

    LevelLimit(String words) {
      this.words = words;
    }

    String inWords() {
      return words;
    }
  }

  /** What the lowest useful frequency comes from. */
  public enum ReachLimit {
    /** The stated frequency at 3 dB down. */
    @JsonProperty("response")
    RESPONSE,
    /** The resonance, where no such frequency is known of both parts. */
    @JsonProperty("resonance")
    RESONANCE,
    /** The travel of the cone at the level that is judged. */
    @JsonProperty("displacement")
    DISPLACEMENT
  }

  /** One position. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record PositionLine(
      @Schema(description = "What the place is called") String name,
      @Schema(description = "Where in the sound stage it plays") Zone zone,
      @Schema(description = "What part of the range it plays") Band band,
      @Schema(description = "Where its mass goes") MountedAt at,
      @Schema(description = "Number of equal drivers") int driverCount,
      @Schema(description = "Frequency at which travel was held against the level, Hz")
          double displacementHz,
      @Schema(description = "Level at which the lowest useful frequency was judged, dB SPL")
          double reachLevelDbSpl,
      @Schema(description = "The factory part; absent where there was nothing") Side before,
      @Schema(description = "The replacement") Side after,
      @Schema(description = "What changes") Change change,
      @Schema(description = "Worst finding on the position") Verdict verdict) {

    PositionLine judged(Verdict worst) {
      return new PositionLine(
          name,
          zone,
          band,
          at,
          driverCount,
          displacementHz,
          reachLevelDbSpl,
          before,
          after,
          change,
          worst);
    }
  }

  /** One part in its position. Levels are of one driver, at 1 m in half space. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Side(
      @Schema(description = "What the part is called") String name,
      @Schema(description = "Level of one driver at 1 W into its rated impedance, dB SPL")
          Double oneWattLevelDbSpl,
      @Schema(description = "Level of one driver at 2.83 V, dB SPL")
          Double twoPointEightThreeVoltLevelDbSpl,
      @Schema(description = "Clean power the amplifier has for one driver, W")
          Double amplifierPowerW,
      @Schema(description = "Level of one driver at its continuous power, dB SPL")
          Double thermalLevelDbSpl,
      @Schema(
              description =
                  "Level of one driver at full travel at the position's displacement_hz, dB SPL")
          Double displacementLevelDbSpl,
      @Schema(description = "Level of one driver at the amplifier's clean power, dB SPL")
          Double amplifierLevelDbSpl,
      @Schema(description = "Lowest of the three, as far as they are known, dB SPL")
          Double largestLevelDbSpl,
      @Schema(description = "Which of the three it is") LevelLimit limitedBy,
      @Schema(
              description =
                  "Below this frequency travel holds the level, above it power or amplifier, Hz")
          Double displacementLimitedBelowHz,
      @Schema(description = "Lowest useful frequency at the position's reach_level_db_spl, Hz")
          Double lowestUsefulHz,
      @Schema(description = "What that frequency comes from") ReachLimit lowestUsefulBy,
      @Schema(description = "Cone area of all drivers of the position, cm²") Double coneAreaCm2,
      @Schema(
              description =
                  "Air moved from rest to one side by all drivers of the position, cm³: cone area"
                      + " times one-way travel")
          Double displacementCm3,
      @Schema(description = "Continuous power of all drivers of the position, W")
          Double continuousPowerW,
      @Schema(description = "Peak power of all drivers of the position, W") Double peakPowerW,
      @Schema(description = "Peak over continuous power, dB") Double peakOverContinuousDb,
      @Schema(description = "Mass of all drivers of the position, g") Double massG,
      @Schema(description = "Price of all drivers of the position") BigDecimal price) {}

  /** Replacement less factory part. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Change(
      @Schema(description = "Mass that comes in less mass that goes out, all drivers, g")
          Double massG,
      @Schema(description = "Continuous power, replacement over factory part, dB")
          Double continuousPowerDb,
      @Schema(description = "Peak power, replacement over factory part, dB") Double peakPowerDb,
      @Schema(
              description =
                  "Level change at equal voltage, dB: what is heard when the volume control stays")
          Double sensitivityAtEqualVoltageDb,
      @Schema(
              description =
                  "Level change at equal power into the rated impedances, dB: which part makes more"
                      + " of a watt")
          Double sensitivityAtEqualPowerDb,
      @Schema(
              description =
                  "Power for the level of the factory part, as a multiple of its own power")
          Double powerRatioForFactoryLevel,
      @Schema(
              description =
                  "Change of the largest clean level, dB; at least this where"
                      + " limits_of_factory_unknown is true")
          Double largestLevelDb,
      @Schema(
              description =
                  "Whether a limit is known of the replacement only: then the changes of level and"
                      + " reach are at least what is given")
          Boolean limitsOfFactoryUnknown,
      @Schema(description = "Octaves the lowest useful frequency moves down; negative is up")
          Double lowerReachOctaves,
      @Schema(description = "Change of the cone area of all drivers, cm²") Double coneAreaCm2,
      @Schema(description = "Change of the air moved from rest to one side, all drivers, cm³")
          Double displacementCm3,
      @Schema(description = "Price of the replacements; what goes out is not counted")
          BigDecimal price,
      @Schema(
              description =
                  "That price for each dB of largest clean level, to the cent, a half rounded up;"
                      + " only for gains of 0.1 dB or more, and not where the gain is only known to"
                      + " be at least something")
          BigDecimal pricePerDb) {}

  /** Positions of one zone and band. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
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
  @JsonInclude(JsonInclude.Include.NON_NULL)
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
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record AdditionLine(
      @Schema(description = "What it is called") String name,
      @Schema(description = "Where its mass goes") MountedAt at,
      @Schema(description = "Mass, g") Double massG,
      @Schema(description = "Price") BigDecimal price,
      @Schema(description = "Whether it is heavy enough for the caution about restraint")
          boolean needsRestraint) {}
}
