package org.footwell.acoustic.exposure;

import static org.footwell.acoustic.exposure.Days.at;
import static org.footwell.acoustic.exposure.Days.day;
import static org.footwell.acoustic.exposure.Days.result;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class SoundExposureProperties {

  @Property
  void aPeriodCutInTwoIsTheSameDay(
      @ForAll @DoubleRange(min = 60, max = 139) double level,
      @ForAll @DoubleRange(min = 0.01, max = 10) double first,
      @ForAll @DoubleRange(min = 0.01, max = 10) double second) {
    SoundExposureResult whole = result(day(at(level, first + second)));
    SoundExposureResult cut = result(day(at(level, first), at(level, second)));
    assertEquals(
        whole.niosh().dosePercent(), cut.niosh().dosePercent(), 1e-9 * whole.niosh().dosePercent());
    assertEquals(
        whole.cfr().dosePercent(), cut.cfr().dosePercent(), 1e-9 * whole.cfr().dosePercent());
    assertEquals(whole.eightHourLevelDba(), cut.eightHourLevelDba(), 1e-9);
  }

  @Property
  void theOrderOfPeriodsDoesNotChangeADose(
      @ForAll @DoubleRange(min = 60, max = 139) double one,
      @ForAll @DoubleRange(min = 60, max = 139) double other) {
    assertEquals(
        result(day(at(one, 1), at(other, 2))).niosh().dosePercent(),
        result(day(at(other, 2), at(one, 1))).niosh().dosePercent(),
        1e-6);
  }

  @Property
  void theTimeLeftFillsTheDose(@ForAll @DoubleRange(min = 80, max = 110) double level) {
    double hours = 0.01;
    double left = result(day(at(level, hours))).niosh().remainingH();
    if (left > 0.0001 && left < 23) {
      assertEquals(100, result(day(at(level, hours), at(level, left))).niosh().dosePercent(), 1e-6);
    }
  }

  @Property
  void aSteadyLevelOfEightHoursIsItsOwnAverage(
      @ForAll @DoubleRange(min = 80, max = 139) double level) {
    SoundExposureResult result = result(day(at(level, 8)));
    assertEquals(level, result.eightHourLevelDba(), 1e-9);
    // The factors are printed as 10.0 and 16.61 in the rules: 3/lg 2 is 9.966, 5/lg 2 16.6096.
    assertEquals(level, result.niosh().twaDba(), 0.19);
    assertEquals(level, result.cfr().twaDba(), 0.005);
    assertTrue(result.permissibleDosePercent() <= result.cfr().dosePercent());
  }
}
