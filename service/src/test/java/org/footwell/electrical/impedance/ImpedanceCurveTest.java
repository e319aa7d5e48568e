package org.footwell.electrical.impedance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Step;
import org.footwell.electrical.impedance.ImpedanceCurveResult.Point;
import org.footwell.electrical.passive.Circuits;
import org.footwell.loudspeaker.CoilImpedance;
import org.footwell.parts.Box;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.CurveFrequencies.Spacing;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.physics.Phasor;
import org.junit.jupiter.api.Test;

class ImpedanceCurveTest {

  private static final ImpedanceCurve CALCULATION = new ImpedanceCurve();

  /** The woofer of the method page: 3.4 ohm, 38 Hz, qms 7, qes 0.55, vas 43 l, no inductance. */
  private static Driver woofer() {
    return withCoil(0, null);
  }

  private static Driver withCoil(double leMh, Double exponent) {
    return Drivers.of(3.4, leMh, exponent, 38.0, 7.0, 0.55);
  }

  private static Driver withRe(double re, double leMh) {
    return DriverBuilder.builder().reOhm(re).leMh(leMh).fsHz(38.0).qms(7.0).qes(0.55).build();
  }

  private static CurveFrequencies range(double from, double to) {
    return CurveFrequencies.range(from, to);
  }

  private static Answer<ImpedanceCurveResult> answer(
      Driver driver, Box box, Double rated, CurveFrequencies frequencies) {
    Driver judged = DriverBuilder.builder(driver).ratedOhm(rated).build();
    return Answers.of(CALCULATION, new ImpedanceCurveRequest(judged, box, frequencies));
  }

  private static List<Fault> faults(Driver driver, Box box, CurveFrequencies frequencies) {
    return Answers.faults(CALCULATION, new ImpedanceCurveRequest(driver, box, frequencies));
  }

  @Test
  void theHandExampleOfTheMethodPageInFreeAir() {
    double halfway = 38 * (1.0 / 7 + Math.sqrt(1.0 / 49 + 4)) / 2;
    assertEquals(40.8111, halfway, 1e-4);
    ImpedanceCurveResult result = answer(woofer(), null, null, Circuits.only(38, halfway)).result();
    assertEquals(46.6727, result.resonanceOhm(), 1e-4);
    assertEquals(0.50993, result.qts(), 1e-5);
    assertEquals(46.6727, result.points().get(0).modulusOhm(), 1e-4);
    assertEquals(0, result.points().get(0).phaseDeg(), 1e-9);
    // 3.4 + 43.2727/(1 + j) = 25.0364 - 21.6364j
    assertEquals(33.0900, result.points().get(1).modulusOhm(), 1e-4);
    assertEquals(-40.834, result.points().get(1).phaseDeg(), 1e-3);
  }

  @Test
  void theHandExampleInAClosedBoxOfAThirdOfVas() {
    ImpedanceCurveResult result = answer(woofer(), Box.closed(43.0 / 3), null, null).result();
    assertEquals(76, result.resonanceHz(), 1e-9);
    assertEquals(46.6727, result.resonanceOhm(), 1e-4);
    assertEquals(14, result.qmc(), 1e-9);
    assertEquals(1.1, result.qec(), 1e-9);
    assertEquals(1.01987, result.qtc(), 1e-5);
    assertEquals(1, result.peaks().size());
    assertEquals(76, result.peaks().get(0).frequencyHz(), 1e-4);
    assertEquals(46.6727, result.peaks().get(0).modulusOhm(), 1e-4);
  }

  @Test
  void aVentedBoxWithHardlyAnyLossHasTwoPeaksThatObeyTheLosslessLaws() {
    ImpedanceCurveResult result =
        answer(
                woofer(),
                BoxBuilder.builder().volumeL(43.0).fbHz(40.0).ql(1000.0).build(),
                null,
                null)
            .result();
    assertNull(result.resonanceHz());
    assertEquals(2, result.peaks().size());
    double low = result.peaks().get(0).frequencyHz();
    double high = result.peaks().get(1).frequencyHz();
    assertEquals(38 * 40, low * high, 0.5);
    assertEquals(2 * 38 * 38 + 40 * 40, low * low + high * high, 2);
    ModulusPoint dip = result.dips().get(0);
    assertEquals(40, dip.frequencyHz(), 0.01);
    // At its tuning the driver meets the leak alone: 1 + qms*alpha*ql/h of its own losses.
    double motion = 43.2727 / (1 + 7 * 1000 / (40.0 / 38));
    assertEquals(3.4 + motion, dip.modulusOhm(), 1e-4);
  }

  @Test
  void theCoilRaisesTheModulusAndTurnsThePhase() {
    Point ideal =
        answer(withCoil(1, null), null, null, Circuits.only(10000)).result().points().get(0);
    // 3.4 + 62.83j and what is left of the motion
    assertEquals(62.92, ideal.modulusOhm(), 0.05);
    assertEquals(86.9, ideal.phaseDeg(), 0.1);
    Point lossy =
        answer(withCoil(1, 0.5), null, null, Circuits.only(10000)).result().points().get(0);
    // 6.2832·√10 = 19.87 both ways
    assertEquals(Math.hypot(3.4 + 19.87, 19.87), lossy.modulusOhm(), 0.1);
  }

  @Test
  void theInductanceIsWhatABridgeShowsAtTheStatedFrequency() {
    Driver driver =
        DriverBuilder.builder()
            .reOhm(3.4)
            .leMh(0.8)
            .leExponent(0.6)
            .leAtHz(120.0)
            .fsHz(38.0)
            .qms(7.0)
            .qes(0.55)
            .build();
    Phasor coil = CoilImpedance.of(driver).at(120);
    assertEquals(2 * Math.PI * 120 * 0.8e-3, coil.im(), 1e-12);
  }

  @Test
  void aRatedImpedanceTheModulusKeepsIsHonest() {
    Answer<ImpedanceCurveResult> answer = answer(withRe(3.3, 0), null, 4.0, range(100, 2000));
    assertEquals(3.2, answer.result().ratedLimitOhm(), 1e-12);
    assertTrue(answer.result().ratedKept());
    assertEquals(List.of("resonance-outside-range"), Answers.codes(answer));
  }

  @Test
  void aRatedImpedanceAboveWhatTheModulusKeepsIsSaidSo() {
    Answer<ImpedanceCurveResult> answer = answer(withRe(3.1, 0), null, 4.0, range(20, 20000));
    assertFalse(answer.result().ratedKept());
    assertEquals(3.1, answer.result().lowestModulusOhm(), 1e-3);
    assertEquals(20000, answer.result().lowestHz(), 1e-9);
    assertEquals(3.1 / 0.8, answer.result().highestRatedOhm(), 1e-3);
    assertEquals(List.of("rated-impedance-too-high"), Answers.codes(answer));
  }

  @Test
  void aRatedImpedanceKeptInItsRangeButNotByTheResistanceIsANote() {
    Answer<ImpedanceCurveResult> answer = answer(withRe(3.15, 1), null, 4.0, range(20, 100));
    assertTrue(answer.result().ratedKept());
    assertEquals(List.of("re-below-rated-limit"), Answers.codes(answer));
  }

  @Test
  void withoutARatedImpedanceNothingIsJudged() {
    ImpedanceCurveResult result = answer(woofer(), null, null, null).result();
    assertNull(result.ratedKept());
    assertNull(result.ratedLimitOhm());
  }

  @Test
  void anIdealCoilIsRemarkedOnlyWhereItMatters() {
    assertEquals(
        List.of("coil-taken-as-ideal"), Answers.codes(answer(withCoil(1, null), null, null, null)));
    assertEquals(List.of(), Answers.codes(answer(withCoil(1, 0.7), null, null, null)));
    assertEquals(List.of(), Answers.codes(answer(withCoil(1, null), null, null, range(20, 200))));
  }

  @Test
  void thirdOctavesAreTheExactOnesAndIncludeTheEndsOfTheRange() {
    List<Point> points =
        answer(
                woofer(),
                null,
                null,
                new CurveFrequencies(Spacing.THIRD_OCTAVE, 100.0, 1000.0, null))
            .result()
            .points();
    assertEquals(11, points.size());
    assertEquals(100, points.get(0).frequencyHz(), 1e-9);
    assertEquals(125.8925, points.get(1).frequencyHz(), 1e-4);
    assertEquals(1000, points.get(10).frequencyHz(), 1e-9);
  }

  @Test
  void twelfthOctavesLieOnBothSidesOfOneKilohertz() {
    List<Point> points = answer(woofer(), null, null, range(960, 1040)).result().points();
    assertEquals(2, points.size());
    // 1000·10^(-1/80) and 1000·10^(1/80)
    assertEquals(971.628, points.get(0).frequencyHz(), 1e-3);
    assertEquals(1029.20, points.get(1).frequencyHz(), 1e-2);
  }

  @Test
  void listedPointsMayLieOutsideTheRange() {
    CurveFrequencies listed = new CurveFrequencies(null, 20.0, 200.0, List.of(5.0, 20000.0));
    ImpedanceCurveResult result = answer(woofer(), null, null, listed).result();
    assertEquals(2, result.points().size());
    assertEquals(200, result.lowestHz(), 1e-9);
  }

  @Test
  void theWorkingsStandForOneFrequencyHoweverManyPointsThereAre() {
    ImpedanceCurveRequest request =
        new ImpedanceCurveRequest(withCoil(1.2, 0.7), Box.vented(50.0, 35.0), null);
    Answer<ImpedanceCurveResult> answer = Answers.withWorkings(CALCULATION, request);
    List<Step> moduli =
        answer.workings().stream().filter(s -> s.quantity().equals("modulus_ohm")).toList();
    assertEquals(1, moduli.size());
    assertEquals(answer.result().lowestModulusOhm(), moduli.get(0).value(), 1e-9);
  }

  @Test
  void theWorkingsEndAtTheAnswerWithAllLossesOfABox() {
    Box lossy =
        BoxBuilder.builder()
            .volumeL(50.0)
            .fbHz(35.0)
            .ql(9.0)
            .qa(30.0)
            .qp(20.0)
            .fillFactor(1.1)
            .build();
    Answer<ImpedanceCurveResult> answer =
        Answers.withWorkings(
            CALCULATION, new ImpedanceCurveRequest(withCoil(1.2, 0.7), lossy, null));
    Step last =
        answer.workings().stream()
            .filter(s -> s.quantity().equals("modulus_ohm"))
            .findFirst()
            .get();
    assertEquals(answer.result().lowestModulusOhm(), last.value(), 1e-9);
  }

  @Test
  void aLeakInAClosedBoxTakesFromThePeak() {
    Box leaky = BoxBuilder.builder().volumeL(43.0 / 3).ql(5.0).build();
    Point at = answer(woofer(), leaky, null, Circuits.only(76)).result().points().get(0);
    // At 76 Hz x is 2, and the leak counts as 2/5: B = 7·3/(2j + 2/5) beside 1 + 7·(2 − 1/2)·j.
    double real = 1 + 21 * 0.4 / (4 + 0.16);
    double imaginary = 10.5 - 21 * 2 / (4 + 0.16);
    double square = real * real + imaginary * imaginary;
    double motional = 3.4 * 7 / 0.55;
    assertEquals(
        Math.hypot(3.4 + motional * real / square, motional * imaginary / square),
        at.modulusOhm(),
        1e-9);
  }

  @Test
  void fillActsLikeALargerBox() {
    Box filled = BoxBuilder.builder().volumeL(20.0).fillFactor(1.2).build();
    assertEquals(
        answer(woofer(), Box.closed(24.0), null, null).result(),
        answer(woofer(), filled, null, null).result());
  }

  @Test
  void whatABoxShallGiveHasNoMeaningForOneThatIsThere() {
    Box wanted = BoxBuilder.builder().volumeL(20.0).qtc(0.7).build();
    Fault fault = faults(woofer(), wanted, null).get(0);
    assertEquals("not-allowed", fault.code());
    assertEquals("/box/qtc", fault.pointer());
  }

  @Test
  void whatIsMissingOfTheDriverAndOfTheRangeIsToldAtOnce() {
    Driver bare = DriverBuilder.builder().reOhm(3.4).build();
    assertEquals(
        List.of(
            "not-ascending /frequencies/to_hz",
            "required /driver/le_mh",
            "required /driver/fs_hz",
            "required /driver/qms",
            "required /driver/qes",
            "needed-beside /driver/vas_l"),
        faults(bare, Box.closed(20.0), range(2000, 20)).stream()
            .map(fault -> fault.code() + " " + fault.pointer())
            .toList());
  }

  @Test
  void aBoxNeedsVas() {
    List<Fault> faults = faults(withRe(3.4, 0), Box.closed(20.0), null);
    assertEquals("needed-beside", faults.get(0).code());
    assertEquals("/driver/vas_l", faults.get(0).pointer());
  }

  @Test
  void rangesThatRunBackwardsOrHoldNoPointAreRefused() {
    Fault reversed = faults(woofer(), null, range(2000, 20)).get(0);
    assertEquals("not-ascending", reversed.code());
    assertEquals("/frequencies/to_hz", reversed.pointer());
    Fault empty =
        faults(woofer(), null, new CurveFrequencies(Spacing.THIRD_OCTAVE, 101.0, 120.0, null))
            .get(0);
    assertEquals("range-without-points", empty.code());
    assertEquals("/frequencies", empty.pointer());
  }

  @Test
  void unsortedAndRepeatedFrequenciesAreRefusedAllAtOnce() {
    List<Fault> faults = faults(woofer(), null, Circuits.only(100, 50, 50, 200));
    assertEquals(2, faults.size());
    assertEquals("not-ascending", faults.get(0).code());
    assertEquals("/frequencies/list_hz/1", faults.get(0).pointer());
    assertEquals("not-ascending", faults.get(1).code());
    assertEquals("/frequencies/list_hz/2", faults.get(1).pointer());
  }

  @Test
  void boundsAreCheckedInListsToo() {
    List<Fault> faults = faults(woofer(), null, Circuits.only(0.5, 200000));
    assertEquals(2, faults.size());
    assertEquals("/frequencies/list_hz/0", faults.get(0).pointer());
    assertEquals("not-allowed", faults.get(0).code());
  }
}
