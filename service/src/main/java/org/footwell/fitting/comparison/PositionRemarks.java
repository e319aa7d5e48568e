package org.footwell.fitting.comparison;

import org.footwell.calculation.Remark;
import org.footwell.calculation.Run;
import org.footwell.fitting.comparison.DriverComparisonResult.PositionLine;
import org.footwell.fitting.comparison.sides.ChangeFigures;
import org.footwell.fitting.comparison.sides.ComparedAmplifier;
import org.footwell.fitting.comparison.sides.ComparedChange;
import org.footwell.fitting.comparison.sides.ComparedPosition;
import org.footwell.fitting.comparison.sides.ComparedSide;
import org.footwell.fitting.comparison.sides.LevelLimit;
import org.footwell.fitting.comparison.sides.ReachLimit;
import org.footwell.fitting.comparison.sides.SideFigures;
import org.footwell.parts.Driver;
import org.footwell.parts.Money;
import org.footwell.parts.Sensitivity.Basis;
import org.footwell.physics.Electricity;
import org.footwell.physics.Piston;
import org.footwell.physics.SensitivityBases;

/** What a fitter would say about the two parts of one position. */
final class PositionRemarks {

  /** Bases of a sensitivity that lie closer are not worth a word, dB; common practice. */
  private static final double BASES_ALIKE_DB = 0.5;

  /** So many times its continuous power a part bears of music at most; common practice, no source. */
  private static final double FAR_ABOVE = 2;

  private final ComparedPosition position;
  private final PositionLine line;
  private final String pointer;
  private final double speed;
  private final Run run;

  /**
   * @param speed of sound, m/s
   */
  PositionRemarks(
      ComparedPosition position, PositionLine line, String pointer, double speed, Run run) {
    this.position = position;
    this.line = line;
    this.pointer = pointer;
    this.speed = speed;
    this.run = run;
  }

  void remark() {
    if (line.before() != null) {
      levels(line.before(), line.after(), line.change());
      sensitivities();
      reach();
    }
    load();
    power(line.after());
    travel(line.after());
    part(position.factory(), line.before(), "factory");
    part(position.replacement(), line.after(), "replacement");
    new KnownData(position, line, pointer, run).remark();
  }

  private void levels(ComparedSide before, ComparedSide after, ComparedChange change) {
    Double largest = change.largestLevelDb();
    boolean alike = ChangeFigures.known(before).equals(ChangeFigures.known(after));
    if (alike && falls(largest)) {
      find(ComparisonFinding.LARGEST_LEVEL_LOWER, "/replacement")
          .value(-largest)
          .with("before", before.largestLevelDbSpl())
          .with("after", after.largestLevelDbSpl())
          .with("by", after.limitedBy());
    }
    if (falls(change.sensitivityAtEqualVoltageDb())) {
      find(ComparisonFinding.QUIETER_AT_SAME_SETTING, "/replacement/sensitivity")
          .value(-change.sensitivityAtEqualVoltageDb());
    }
    if (falls(change.sensitivityAtEqualPowerDb())) {
      find(ComparisonFinding.MORE_POWER_NEEDED, "/replacement/sensitivity")
          .value(-change.sensitivityAtEqualPowerDb())
          .with("ratio", change.powerRatioForFactoryLevel());
    }
  }

  private static boolean falls(Double change) {
    return change != null && change <= -Money.SLIGHT_DB;
  }

  private void sensitivities() {
    Driver factory = position.factory();
    Driver replacement = position.replacement();
    if (factory.sensitivity() != null
        && replacement.sensitivity() != null
        && factory.sensitivity().basis() != replacement.sensitivity().basis()
        && (unlikeBases(factory) || unlikeBases(replacement))) {
      find(ComparisonFinding.SENSITIVITIES_UNLIKE, "");
    }
  }

  private static boolean unlikeBases(Driver driver) {
    double difference = SensitivityBases.BASIS_DIFFERENCE.at(driver.ratedOhm());
    return driver.sensitivity().basis() == Basis.TWO_POINT_EIGHT_THREE_VOLT
        && Math.abs(difference) > BASES_ALIKE_DB;
  }

  private void reach() {
    ReachLimit before = SideFigures.reachBasis(position, position.before());
    ReachLimit after = SideFigures.reachBasis(position, position.after());
    if (before != null && after != null && before != after) {
      find(ComparisonFinding.REACH_UNLIKE, "");
    }
  }

  private void load() {
    double rated = position.replacement().ratedOhm();
    boolean stays = position.amplifierAfter() == null;
    ComparedAmplifier amplifier = stays ? position.amplifierBefore() : position.amplifierAfter();
    if (amplifier != null && amplifier.minimumOhm() != null) {
      if (rated < amplifier.minimumOhm()) {
        find(ComparisonFinding.REPLACEMENT_BELOW_MINIMUM_LOAD, "/replacement/rated_ohm")
            .value(rated)
            .limit(amplifier.minimumOhm());
      }
      return;
    }
    if (stays && position.factory() != null && rated < position.factory().ratedOhm()) {
      find(ComparisonFinding.REPLACEMENT_LOADS_MORE, "/replacement/rated_ohm")
          .value(rated)
          .limit(position.factory().ratedOhm())
          .with("ratio", position.factory().ratedOhm() / rated);
    }
  }

  private void power(ComparedSide after) {
    Double bears = position.replacement().continuousPowerW();
    Double has = after.amplifierPowerW();
    if (bears != null && has != null && has > FAR_ABOVE * bears) {
      find(ComparisonFinding.AMPLIFIER_FAR_ABOVE_RATING, "/replacement/continuous_power_w")
          .value(has)
          .limit(bears)
          .with(
              "amplifier",
              position.amplifierAfter() == null
                  ? ComparisonWords.AMPLIFIER_THAT_STAYS
                  : ComparisonWords.AMPLIFIER)
          .with("ratio", has / bears)
          .with("volt", Electricity.VOLTAGE.at(bears, position.replacement().ratedOhm()));
    }
  }

  private void travel(ComparedSide after) {
    if (after.limitedBy() == LevelLimit.DISPLACEMENT
        && after.displacementLimitedBelowHz() != null) {
      find(ComparisonFinding.TRAVEL_LIMITED, "/replacement/xmax_mm")
          .value(after.largestLevelDbSpl())
          .limit(after.displacementLimitedBelowHz())
          .with("at", position.displacementHz());
    }
  }

  private void part(Driver driver, ComparedSide side, String which) {
    if (driver == null) {
      return;
    }
    ComparisonWords part =
        which.equals("factory") ? ComparisonWords.FACTORY_PART : ComparisonWords.NEW_PART;
    if (driver.sensitivity() != null && unlikeBases(driver)) {
      find(ComparisonFinding.SENSITIVITY_NOT_PER_WATT, "/" + which + "/sensitivity")
          .value(driver.sensitivity().levelDbSpl())
          .with("part", part)
          .with("watt", Electricity.POWER.at(SensitivityBases.REFERENCE_V, driver.ratedOhm()))
          .with("ohm", driver.ratedOhm())
          .with("per", side.oneWattLevelDbSpl());
    }
    if (driver.continuousPowerW() != null
        && driver.peakPowerW() != null
        && driver.peakPowerW() < driver.continuousPowerW()) {
      find(ComparisonFinding.PEAK_BELOW_CONTINUOUS, "/" + which + "/peak_power_w")
          .value(driver.peakPowerW())
          .limit(driver.continuousPowerW())
          .with("part", part);
    }
    if (driver.displacementKnown()) {
      double limit = Piston.FREQUENCY_OF_KA.at(1, driver.sdCm2(), speed);
      double highest = highestOfTravel(side);
      if (highest > limit) {
        find(ComparisonFinding.PISTON_MODEL_LIMIT, "/displacement_hz")
            .value(highest)
            .limit(limit)
            .with("part", part);
      }
    }
  }

  /** The highest frequency that a level from the part's travel is given for, Hz. */
  private double highestOfTravel(ComparedSide side) {
    return side.limitedBy() == LevelLimit.DISPLACEMENT && side.displacementLimitedBelowHz() != null
        ? side.displacementLimitedBelowHz()
        : position.displacementHz();
  }

  private Remark find(ComparisonFinding code, String field) {
    return run.find(code).at(pointer + field).own("name", position.name());
  }
}
