package org.footwell.acoustic.level;

import static org.footwell.acoustic.level.SoundLevels.driver;
import static org.footwell.acoustic.level.SoundLevels.oneWatt;
import static org.footwell.acoustic.level.SoundLevels.result;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.acoustic.level.SoundLevelRequest.Compression;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;

class SoundLevelProperties {

  @Property
  void morePowerIsNeverQuieterWithinTheModel(
      @ForAll @DoubleRange(min = 0.01, max = 99) double power,
      @ForAll @DoubleRange(min = 0, max = 6) double compression) {
    assertTrue(level(power * 1.01, compression) >= level(power, compression));
  }

  @Property
  void tenTimesThePowerIsTenDbLouderWithoutCompression(
      @ForAll @DoubleRange(min = 0.01, max = 1000) double power) {
    assertEquals(10, level(10 * power, 0) - level(power, 0), 1e-9);
  }

  @Property
  void thePowerNeededReachesTheTarget(
      @ForAll @DoubleRange(min = 80, max = 104) double target,
      @ForAll @DoubleRange(min = 0, max = 5) double compression) {
    double needed = result(draft(1, compression).targetLevelDbSpl(target)).powerNeededW();
    assertEquals(target, level(needed, compression), 1e-6);
  }

  @Property
  void bothBasesOfSensitivityGiveTheSameLevel(@ForAll @DoubleRange(min = 1, max = 32) double ohm) {
    SoundLevelRequestBuilder draft = draft(10, 0).driver(driver().ratedOhm(ohm).build());
    SoundLevelResult perWatt = result(draft);
    Sensitivity atVoltage =
        new Sensitivity(
            perWatt.twoPointEightThreeVoltLevelDbSpl(), Basis.TWO_POINT_EIGHT_THREE_VOLT);
    draft.driver(driver().ratedOhm(ohm).sensitivity(atVoltage).build());
    assertEquals(perWatt.levelDbSpl(), result(draft).levelDbSpl(), 1e-9);
  }

  @Property
  void theLargestLevelIsAboveNeitherTheLevelNorALimit(
      @ForAll @DoubleRange(min = 0.01, max = 1000) double power,
      @ForAll @DoubleRange(min = 10, max = 100) double frequency,
      @ForAll @DoubleRange(min = 3, max = 20) double crest) {
    SoundLevelRequestBuilder draft =
        draft(power, 0)
            .crestFactorDb(crest)
            .driver(driver().continuousPowerW(100.0).sdCm2(200.0).xmaxMm(5.0).build())
            .displacementHz(frequency);
    SoundLevelResult result = result(draft);
    double least =
        Math.min(
            result.levelDbSpl(),
            Math.min(
                result.limits().thermalLevelDbSpl(), result.limits().displacementLevelDbSpl()));
    assertEquals(least, result.limits().largestLevelDbSpl(), 1e-9);
  }

  private static double level(double power, double compression) {
    return result(draft(power, compression)).levelDbSpl();
  }

  private static SoundLevelRequestBuilder draft(double power, double compression) {
    return oneWatt().powerW(power).compression(new Compression(compression, 100.0));
  }
}
