package org.footwell.acoustic.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.acoustic.level.SoundLevelRequest.Compression;
import org.footwell.acoustic.level.SoundLevelRequest.Cone;
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
    SoundLevelTest.Draft draft = draft(1, compression);
    draft.targetLevelDbSpl = target;
    double needed = draft.answer().result().powerNeededW();
    assertEquals(target, level(needed, compression), 1e-6);
  }

  @Property
  void bothBasesOfSensitivityGiveTheSameLevel(@ForAll @DoubleRange(min = 1, max = 32) double ohm) {
    SoundLevelTest.Draft draft = draft(10, 0);
    draft.ratedOhm = ohm;
    SoundLevelResult perWatt = draft.answer().result();
    draft.sensitivity =
        new Sensitivity(
            perWatt.twoPointEightThreeVoltLevelDbSpl(), Basis.TWO_POINT_EIGHT_THREE_VOLT);
    assertEquals(perWatt.levelDbSpl(), draft.answer().result().levelDbSpl(), 1e-9);
  }

  @Property
  void theLargestLevelIsAboveNeitherTheLevelNorALimit(
      @ForAll @DoubleRange(min = 0.01, max = 1000) double power,
      @ForAll @DoubleRange(min = 10, max = 100) double frequency,
      @ForAll @DoubleRange(min = 3, max = 20) double crest) {
    SoundLevelTest.Draft draft = draft(power, 0);
    draft.crestFactorDb = crest;
    draft.continuousPowerW = 100.0;
    draft.cone = new Cone(200.0, 5.0, frequency);
    SoundLevelResult result = draft.answer().result();
    double least =
        Math.min(
            result.levelDbSpl(),
            Math.min(
                result.limits().thermalLevelDbSpl(), result.limits().displacementLevelDbSpl()));
    assertEquals(least, result.limits().largestLevelDbSpl(), 1e-9);
  }

  private static double level(double power, double compression) {
    return draft(power, compression).answer().result().levelDbSpl();
  }

  private static SoundLevelTest.Draft draft(double power, double compression) {
    SoundLevelTest.Draft draft = new SoundLevelTest.Draft();
    draft.powerW = power;
    draft.compression = new Compression(compression, 100.0);
    return draft;
  }
}
