package org.footwell.measured.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.measured.arrival.DegradationStudy.Place;
import org.footwell.measured.arrival.MadeUpRoom.Reflection;
import org.footwell.measured.arrival.MadeUpRoom.Speaker;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the method page promises, on a few trials each. */
@Tag("long")
class DegradationTest {

  private static final DegradationStudy STUDY = new DegradationStudy(8);

  @ParameterizedTest
  @EnumSource(Speaker.class)
  void inACabinAtFortyDecibelsEveryArrivalIsFoundWithinItsUncertaintyAndUpright(Speaker speaker) {
    Trials trials =
        STUDY.run(
            speaker,
            room -> {
              Place.CABIN.furnish(room);
              room.peakToNoiseDb = 40;
            });
    assertEquals(0, trials.lost(), trials::toString);
    assertTrue(trials.covered() >= 7 / 8.0, trials::toString);
    assertEquals(1, trials.rightPolarity(), trials::toString);
    assertEquals(1, trials.excessPhase(), trials::toString);
  }

  @ParameterizedTest
  @EnumSource(
      value = Speaker.class,
      names = {"TWEETER", "DOOR", "FULL_RANGE"})
  void aReflectionSixDecibelsStrongerIsToldApartAndOneOfNineIsNot(Speaker speaker) {
    assertTrue(Math.abs(reflected(speaker, 6).medianMs()) < 0.15);
    assertEquals(2, reflected(speaker, 9).medianMs(), 0.15);
  }

  @ParameterizedTest
  @EnumSource(
      value = Speaker.class,
      names = {"WOOFER", "SUBWOOFER"})
  void amongTheModesOfACabinNoPolarityIsToldWronglyAndUncertaintiesHold(Speaker speaker) {
    Trials trials = new DegradationStudy(60).among(speaker, Place.MODAL_CABIN);
    assertEquals(0, trials.sureAndWrong(), trials::toString);
    assertTrue(trials.covered() >= 0.93, trials::toString);
    assertEquals(0, trials.lost(), trials::toString);
  }

  @ParameterizedTest
  @EnumSource(
      value = Place.class,
      names = {"FREE_FIELD", "CABIN"})
  void awayFromModesTheSameWoofersAreStillTold(Place place) {
    Trials trials = new DegradationStudy(40).among(Speaker.WOOFER, place);
    assertTrue(trials.surePolarity() > 0.5 && trials.covered() == 1, trials::toString);
    assertEquals(0, trials.sureAndWrong(), trials::toString);
    assertTrue(
        new DegradationStudy(20).among(Speaker.SUBWOOFER, place).surePolarity() > 0.9,
        trials::toString);
  }

  @ParameterizedTest
  @EnumSource(
      value = Speaker.class,
      names = {"TWEETER", "DOOR", "FULL_RANGE"})
  void nothingBeforeTheDirectSoundIsTakenForItAndAStrongerReflectionIsTold(Speaker speaker) {
    Trials hard = new DegradationStudy(20).inNoise(speaker, Place.HARD_CABIN, 30);
    assertEquals(0, hard.early(), hard::toString);
    assertEquals(1, STUDY.reflected(speaker, 3, 2).reflectionStronger());
    assertEquals(0, STUDY.reflected(speaker, -3, 2).reflectionStronger());
  }

  @ParameterizedTest
  @EnumSource(
      value = Speaker.class,
      names = {"TWEETER", "FULL_RANGE"})
  void whatRingsBeforeASoundThatWasCutOffIsNotTakenForIt(Speaker speaker) {
    for (Trials trials : FirstSoundStudy.cutOff(STUDY, speaker, Place.CABIN, 10_000)) {
      assertEquals(0, trials.early(), trials::toString);
    }
  }

  private static Trials reflected(Speaker speaker, double db) {
    return STUDY.run(
        speaker, room -> room.reflections.add(new Reflection(Math.pow(10, db / 20), 0.002)));
  }
}
