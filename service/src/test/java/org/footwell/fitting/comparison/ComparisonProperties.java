package org.footwell.fitting.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.footwell.fitting.comparison.DriverComparisonResult.GroupLine;
import org.footwell.fitting.comparison.sides.ComparedChange;
import org.footwell.fitting.comparison.sides.ComparedPosition.Zone;
import org.footwell.fitting.comparison.sides.ComparedSide;
import org.footwell.parts.DriverBuilder;

class ComparisonProperties {

  private static PositionDraft position(double level, double watts, double sd, double xmax) {
    PositionDraft position = new PositionDraft();
    DriverBuilder driver = position.replacement;
    driver
        .sensitivity(ComparedParts.perWatt(level))
        .continuousPowerW(watts)
        .peakPowerW(2 * watts)
        .sdCm2(sd)
        .xmaxMm(xmax);
    return position;
  }

  @Property(tries = 200)
  void theOtherWayRoundEveryChangeIsItsNegative(
      @ForAll @DoubleRange(min = 75, max = 105) double level,
      @ForAll @DoubleRange(min = 1, max = 2000) double watts,
      @ForAll @DoubleRange(min = 5, max = 1200) double sd,
      @ForAll @DoubleRange(min = 0.1, max = 30) double xmax) {
    PositionDraft position = position(level, watts, sd, xmax);
    ComparedChange forth = ComparisonDraft.of(position).line(0).change();
    DriverBuilder factory = position.factory;
    position.factory = position.replacement;
    position.replacement = factory;
    position
        .place
        .amplifierBefore(PositionDraft.AMPLIFIER_AFTER)
        .amplifierAfter(PositionDraft.AMPLIFIER_BEFORE);
    ComparedChange back = ComparisonDraft.of(position).line(0).change();
    assertEquals(-forth.largestLevelDb(), back.largestLevelDb(), 1e-9);
    assertEquals(-forth.massG(), back.massG(), 1e-9);
    assertEquals(-forth.continuousPowerDb(), back.continuousPowerDb(), 1e-9);
    assertEquals(-forth.sensitivityAtEqualVoltageDb(), back.sensitivityAtEqualVoltageDb(), 1e-9);
    assertEquals(-forth.lowerReachOctaves(), back.lowerReachOctaves(), 1e-9);
    assertEquals(1, forth.powerRatioForFactoryLevel() * back.powerRatioForFactoryLevel(), 1e-9);
  }

  @Property(tries = 200)
  void theLargestLevelIsTheLowestOfTheThree(
      @ForAll @DoubleRange(min = 75, max = 105) double level,
      @ForAll @DoubleRange(min = 1, max = 2000) double watts,
      @ForAll @DoubleRange(min = 5, max = 1200) double sd,
      @ForAll @DoubleRange(min = 0.1, max = 30) double xmax) {
    ComparedSide after = ComparisonDraft.of(position(level, watts, sd, xmax)).line(0).after();
    double least =
        Math.min(
            after.thermalLevelDbSpl(),
            Math.min(after.displacementLevelDbSpl(), after.amplifierLevelDbSpl()));
    assertEquals(least, after.largestLevelDbSpl(), 0);
  }

  @Property(tries = 200)
  void whereTravelLetsGoItsLevelIsThatOfTheOtherLimits(
      @ForAll @DoubleRange(min = 80, max = 100) double level,
      @ForAll @DoubleRange(min = 5, max = 500) double watts,
      @ForAll @DoubleRange(min = 50, max = 1200) double sd,
      @ForAll @DoubleRange(min = 1, max = 20) double xmax) {
    PositionDraft position = position(level, watts, sd, xmax);
    ComparedSide after = ComparisonDraft.of(position).line(0).after();
    position.place.displacementHz(after.displacementLimitedBelowHz());
    ComparedSide there = ComparisonDraft.of(position).line(0).after();
    assertEquals(
        Math.min(there.thermalLevelDbSpl(), there.amplifierLevelDbSpl()),
        there.displacementLevelDbSpl(),
        1e-9);
  }

  @Property(tries = 100)
  void theNumberOfDriversChangesMassAndAreaAndNoDifferenceOfLevels(
      @ForAll @IntRange(min = 1, max = 32) int count) {
    PositionDraft position = new PositionDraft();
    position.place.driverCount(1);
    ComparedChange one = ComparisonDraft.of(position).line(0).change();
    position.place.driverCount(count);
    ComparedChange several = ComparisonDraft.of(position).line(0).change();
    assertEquals(one.largestLevelDb(), several.largestLevelDb(), 1e-12);
    assertEquals(one.continuousPowerDb(), several.continuousPowerDb(), 1e-9);
    assertEquals(count * one.massG(), several.massG(), 1e-9);
    assertEquals(count * one.coneAreaCm2(), several.coneAreaCm2(), 1e-9);
  }

  /** Whatever a piece of music asks of the groups, the whole gains what the answer says at least. */
  @Property(tries = 300)
  void noBalanceOfTheGroupsGainsLessThanStated(
      @ForAll @DoubleRange(min = -30, max = 30) double rearAsksFor,
      @ForAll @DoubleRange(min = 0.5, max = 20) double frontXmax,
      @ForAll @DoubleRange(min = 0.5, max = 20) double rearXmax) {
    PositionDraft front = PositionDraft.named("front");
    front.replacement.xmaxMm(frontXmax);
    PositionDraft rear = PositionDraft.named("rear");
    rear.place.zone(Zone.REAR);
    rear.factory.continuousPowerW(5.0);
    rear.replacement.xmaxMm(rearXmax);
    DriverComparisonResult result = ComparisonDraft.of(front, rear).result();
    GroupLine a = result.groups().get(0);
    GroupLine b = result.groups().get(1);
    double before =
        Math.min(a.largestLevelBeforeDbSpl(), b.largestLevelBeforeDbSpl() - rearAsksFor);
    double after = Math.min(a.largestLevelAfterDbSpl(), b.largestLevelAfterDbSpl() - rearAsksFor);
    assertTrue(after - before >= result.totals().levelChangeDb() - 1e-9);
  }
}
