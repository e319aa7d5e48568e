package org.footwell.electrical.impedance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.electrical.impedance.ImpedanceFitRequest.AddedMass;
import org.footwell.electrical.impedance.ImpedanceFitRequest.KnownBox;
import org.footwell.electrical.impedance.ImpedanceFitRequest.Reading;
import org.footwell.loudspeaker.DriverCircuit;
import org.footwell.parts.Box;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.physics.Phasor;
import org.junit.jupiter.api.Test;

class ImpedanceFitTest {

  private static final ImpedanceFit CALCULATION = new ImpedanceFit();
  private static final Driver WOOFER = Drivers.of(3.4, 1.2, 0.7, 38.0, 7.0, 0.55);

  /** A table as a careful person would measure it, moduli only unless asked. */
  static List<Reading> table(Driver driver, Box box, double from, double to, boolean phases) {
    DriverCircuit impedance = MountedDriver.circuit(driver, box);
    List<Reading> readings = new ArrayList<>();
    for (double f = from; f <= to; f *= 1.06) {
      Phasor z = impedance.at(f);
      readings.add(new Reading(f, z.modulus(), phases ? z.phaseDeg() : null));
    }
    return readings;
  }

  private static List<Reading> noisy(List<Reading> clean, double share) {
    Random random = new Random(7);
    return clean.stream()
        .map(
            r ->
                new Reading(
                    r.frequencyHz(), r.modulusOhm() * (1 + share * random.nextGaussian()), null))
        .toList();
  }

  private static ImpedanceFitRequest free(List<Reading> readings, Double re) {
    return new ImpedanceFitRequest(readings, re, null, null, null, null);
  }

  private static ImpedanceFitRequest with(Double sd, AddedMass mass, KnownBox box) {
    return new ImpedanceFitRequest(
        table(WOOFER, null, 10, 20000, false), null, null, sd, mass, box);
  }

  /** The woofer with resonance and Qs as a mass or a spring changes them. */
  private static Driver moved(double fs, double qms, double qes) {
    return Drivers.of(3.4, 1.2, 0.7, fs, qms, qes);
  }

  /** 20 g on 62 g. */
  private static AddedMass mass() {
    double root = Math.sqrt(82.0 / 62);
    return new AddedMass(
        20.0, table(moved(38 / root, 7 * root, 0.55 * root), null, 10, 500, false));
  }

  private static KnownBox box(double volume) {
    return new KnownBox(volume, table(WOOFER, Box.closed(25.0), 10, 500, false));
  }

  private static List<String> codes(ImpedanceFitRequest request) {
    return Answers.codes(Answers.of(CALCULATION, request));
  }

  @Test
  void moduliAloneGiveAllParametersOfALossyCoilAndAResonance() {
    Answer<ImpedanceFitResult> answer =
        Answers.of(CALCULATION, free(table(WOOFER, null, 10, 20000, false), null));
    ImpedanceFitResult r = answer.result();
    assertEquals(3.4, r.reOhm(), 1e-6);
    assertEquals(1.2, r.leMh(), 1e-6);
    assertEquals(0.7, r.leExponent(), 1e-6);
    assertEquals(38, r.fsHz(), 1e-6);
    assertEquals(7, r.qms(), 1e-6);
    assertEquals(0.55, r.qes(), 1e-6);
    assertEquals(46.6727, r.resonanceOhm(), 1e-4);
    assertEquals(0, r.residualPercent(), 1e-6);
    assertNull(r.residualPhaseDeg());
    assertNull(r.mmsG());
    assertEquals(List.of(), answer.findings());
  }

  @Test
  void noiseShowsInTheResidualAndTheTruthLiesWithinTheConfidence() {
    ImpedanceFitResult r =
        Answers.of(CALCULATION, free(noisy(table(WOOFER, null, 10, 20000, false), 0.01), null))
            .result();
    assertEquals(1, r.residualPercent(), 0.15);
    assertTrue(r.largestResidualPercent() > r.residualPercent());
    // One seed only: twice the interval leaves no room for chance.
    assertEquals(3.4, r.reOhm(), 2 * 0.034 * r.reConfidencePercent());
    assertEquals(38, r.fsHz(), 2 * 0.38 * r.fsConfidencePercent());
    assertEquals(7, r.qms(), 2 * 0.07 * r.qmsConfidencePercent());
    assertEquals(0.55, r.qes(), 2 * 0.0055 * r.qesConfidencePercent());
    assertTrue(r.fsConfidencePercent() > 0.02 && r.fsConfidencePercent() < 0.5);
  }

  @Test
  void theTruthLiesWithinTheConfidenceNineteenTimesInTwenty() {
    List<Reading> clean = table(WOOFER, null, 10, 20000, false);
    Random random = new Random(20);
    int within = 0;
    for (int i = 0; i < 200; i++) {
      List<Reading> readings = new ArrayList<>();
      for (Reading r : clean) {
        double noise = Math.exp(0.02 * random.nextGaussian());
        readings.add(new Reading(r.frequencyHz(), r.modulusOhm() * noise, null));
      }
      ImpedanceFitResult r = Answers.of(CALCULATION, free(readings, null)).result();
      within += Math.abs(Math.log(r.qms() / 7)) < r.qmsConfidencePercent() / 100 ? 1 : 0;
    }
    // 190 expected; four standard deviations of the count either way.
    assertEquals(190, within, 13);
  }

  @Test
  void aGivenResistanceIsKeptAndHasNoConfidence() {
    ImpedanceFitResult r =
        Answers.of(CALCULATION, free(table(WOOFER, null, 20, 20000, true), 3.4)).result();
    assertEquals(3.4, r.reOhm());
    assertNull(r.reConfidencePercent());
    assertEquals(7, r.qms(), 1e-5);
    assertNotNull(r.residualPhaseDeg());
  }

  @Test
  void aTableThatEndsEarlyHasNoCoilInIt() {
    Answer<ImpedanceFitResult> answer =
        Answers.of(
            CALCULATION,
            free(
                table(
                    DriverBuilder.builder()
                        .reOhm(3.4)
                        .leMh(0.01)
                        .fsHz(38.0)
                        .qms(7.0)
                        .qes(0.55)
                        .build(),
                    null,
                    10,
                    150,
                    false),
                null));
    assertEquals(List.of("coil-not-in-table"), Answers.codes(answer));
    assertNull(answer.result().leMh());
    assertEquals(38, answer.result().fsHz(), 0.01);
  }

  @Test
  void aTableThatHardlyShowsTheCoilTakesTheUsualExponent() {
    Driver driver =
        DriverBuilder.builder()
            .reOhm(3.4)
            .leMh(0.5)
            .leExponent(0.7)
            .fsHz(38.0)
            .qms(7.0)
            .qes(0.55)
            .build();
    Answer<ImpedanceFitResult> answer =
        Answers.of(CALCULATION, free(noisy(table(driver, null, 10, 150, false), 0.05), null));
    assertTrue(Answers.codes(answer).contains("coil-exponent-assumed"));
    assertEquals(0.7, answer.result().leExponent());
    assertNull(answer.result().leExponentConfidencePercent());
    assertEquals(38, answer.result().fsHz(), 0.6);
  }

  @Test
  void whoeverWantsAnIdealCoilGetsOne() {
    ImpedanceFitRequest request =
        new ImpedanceFitRequest(
            table(WOOFER, null, 10, 20000, false), null, false, null, null, null);
    Answer<ImpedanceFitResult> answer = Answers.of(CALCULATION, request);
    assertEquals(1, answer.result().leExponent());
    assertTrue(Answers.codes(answer).contains("fit-poor"));
  }

  @Test
  void anIdealCoilIsFoundToBeOne() {
    Driver ideal =
        DriverBuilder.builder().reOhm(3.4).leMh(0.5).fsHz(38.0).qms(7.0).qes(0.55).build();
    ImpedanceFitResult r =
        Answers.of(CALCULATION, free(table(ideal, null, 10, 20000, false), null)).result();
    assertEquals(1, r.leExponent(), 1e-6);
    assertEquals(0.5, r.leMh(), 1e-6);
  }

  @Test
  void anAddedMassGivesTheMovingMassAndWithTheAreaVas() {
    ImpedanceFitResult r = Answers.of(CALCULATION, with(330.0, mass(), null)).result();
    assertEquals(62, r.mmsG(), 1e-4);
    // 10⁶/((2π·38)²·62) = 0.28293 mm/N; 141827·0.033²·0.28293 = 43.70 l
    assertEquals(0.28293, r.cmsMmPerN(), 1e-5);
    assertEquals(43.70, r.vasL(), 0.01);
    // √(2π·38·0.062·3.4/0.55) = 9.566
    assertEquals(9.566, r.blTm(), 1e-3);
    assertEquals(38 / Math.sqrt(82.0 / 62), r.withMass().resonanceHz(), 1e-5);
    assertNull(r.inBox());
  }

  @Test
  void aKnownBoxGivesVasAndWithTheAreaTheMovingMass() {
    ImpedanceFitResult r = Answers.of(CALCULATION, with(330.0, null, box(25))).result();
    assertEquals(43, r.vasL(), 1e-4);
    assertEquals(38 * Math.sqrt(1 + 43.0 / 25), r.inBox().resonanceHz(), 1e-4);
    // 43/(141827·0.033²) = 0.27841 mm/N; 10⁶/((2π·38)²·0.27841) = 63.01 g
    assertEquals(0.27841, r.cmsMmPerN(), 1e-5);
    assertEquals(63.01, r.mmsG(), 0.01);
    ImpedanceFitResult withoutArea = Answers.of(CALCULATION, with(null, null, box(25))).result();
    assertEquals(43, withoutArea.vasL(), 1e-4);
    assertNull(withoutArea.mmsG());
  }

  @Test
  void bothTablesTogetherCheckTheArea() {
    assertEquals(List.of(), codes(with(330.0, mass(), box(25))));
    assertEquals(List.of("area-inconsistent"), codes(with(450.0, mass(), box(25))));
  }

  @Test
  void aSuspensionThatChangedBetweenTheTablesIsNoticed() {
    // Mass as before, but the suspension 15 % softer: fs falls further, Q over fs does not.
    double mass = Math.sqrt(82.0 / 62);
    double soft = Math.sqrt(1.15);
    AddedMass changed =
        new AddedMass(
            20.0,
            table(
                moved(38 / mass / soft, 7 * mass / soft, 0.55 * mass / soft),
                null,
                10,
                500,
                false));
    assertEquals(List.of("second-table-inconsistent"), codes(with(null, changed, null)));
  }

  @Test
  void exchangedTablesAreRefused() {
    Fault fault =
        Answers.faults(
                CALCULATION,
                with(
                    null,
                    new AddedMass(20.0, table(moved(45, 7, 0.55), null, 10, 500, false)),
                    null))
            .get(0);
    assertEquals("mass-without-effect", fault.code());
    assertEquals("/added_mass/readings", fault.pointer());
    Fault box =
        Answers.faults(
                CALCULATION,
                with(
                    null,
                    null,
                    new KnownBox(20.0, table(moved(30, 7, 0.55), null, 10, 500, false))))
            .get(0);
    assertEquals("box-without-effect", box.code());
    assertEquals("/known_box/readings", box.pointer());
  }

  @Test
  void aVentedBoxIsNotTakenForADriverInFreeAir() {
    List<String> codes = codes(free(table(WOOFER, Box.vented(50.0, 35.0), 10, 20000, false), null));
    assertTrue(codes.contains("second-peak"), codes::toString);
    assertTrue(codes.contains("fit-poor"), codes::toString);
  }

  @Test
  void aTableWithoutAPeakIsRefused() {
    Fault fault =
        Answers.faults(CALCULATION, free(table(WOOFER, null, 60, 20000, false), null)).get(0);
    assertEquals("resonance-not-found", fault.code());
    assertEquals("/readings", fault.pointer());
  }

  @Test
  void unsortedTablesAreRefusedWhereTheyTurnBack() {
    List<Reading> readings = new ArrayList<>(table(WOOFER, null, 10, 20000, false));
    readings.set(5, readings.get(4));
    readings.add(new Reading(30.0, 5.0, null));
    List<Fault> faults = Answers.faults(CALCULATION, free(readings, null));
    assertEquals("not-ascending", faults.get(0).code());
    assertEquals("/readings/5/frequency_hz", faults.get(0).pointer());
    assertEquals("not-ascending", faults.get(1).code());
    assertEquals("/readings/" + (readings.size() - 1) + "/frequency_hz", faults.get(1).pointer());
  }

  /** One of the searches ends where rounding leaves less than nothing of a variance. */
  @Test
  void aFitThatTheReadingsDoNotDetermineIsPassedOver() {
    double[] hz = {20, 21, 24, 28, 105, 196, 224, 234};
    double[] ohm = {9, 3, 3, 212, 3, 3, 3, 26};
    Double[] deg = {null, null, -42.0, 30.0, null, -86.0, null, -40.0};
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < hz.length; i++) {
      readings.add(new Reading(hz[i], ohm[i], deg[i]));
    }
    List<String> codes = codes(free(readings, null));
    assertTrue(codes.containsAll(List.of("fit-poor", "fit-uncertain")), codes::toString);
  }

  @Test
  void tooFewReadingsAreRefused() {
    List<Reading> few = table(WOOFER, null, 10, 20000, false).subList(0, 7);
    Fault fault = Answers.faults(CALCULATION, free(few, null)).get(0);
    assertEquals("not-allowed", fault.code());
    assertEquals("/readings", fault.pointer());
  }

  @Test
  void thePlainLawsByHand() {
    // (40/32)² − 1 = 0.5625; 9/0.5625 = 16
    assertEquals(16, MovingMass.MMS_G.at(9, 40, 32), 1e-12);
    // 76·1.1/(38·0.55) − 1 = 3
    assertEquals(60, MovingMass.VAS_IN_BOX_L.at(20, 76 * 1.1, 38 * 0.55), 1e-12);
    assertEquals(60, MovingMass.VAS_BY_RESONANCE_L.at(20, 76, 38), 1e-12);
  }
}
