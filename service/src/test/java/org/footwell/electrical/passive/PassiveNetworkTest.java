package org.footwell.electrical.passive;

import static org.footwell.parts.LadderElement.Place.SERIES;
import static org.footwell.parts.LadderElement.Place.SHUNT;
import static org.footwell.parts.LadderElement.Wiring.IN_PARALLEL;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.passive.PassiveNetworkResult.Point;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.Box;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Driver;
import org.footwell.parts.LadderElement;
import org.footwell.parts.LadderElementBuilder;
import org.junit.jupiter.api.Test;

class PassiveNetworkTest {

  private static final PassiveNetwork CALCULATION = new PassiveNetwork();

  private static PassiveNetworkRequest into(
      double ohm, CurveFrequencies frequencies, LadderElement... elements) {
    return PassiveNetworkRequestBuilder.builder()
        .elements(Arrays.asList(elements))
        .loadOhm(ohm)
        .frequencies(frequencies)
        .build();
  }

  private static PassiveNetworkRequest judged(double ohm, double minimum) {
    return PassiveNetworkRequestBuilder.builder()
        .elements(List.of(LadderElement.resistor(SHUNT, 1000)))
        .loadOhm(ohm)
        .amplifier(AmplifierBuilder.builder().minimumOhm(minimum).build())
        .build();
  }

  private static Answer<PassiveNetworkResult> answer(PassiveNetworkRequest request) {
    return Answers.of(CALCULATION, request);
  }

  private static Fault fault(LadderElement... elements) {
    List<Fault> faults = Answers.faults(CALCULATION, into(4, null, elements));
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }

  private static LadderElement coil(LadderElement.Place place, double mh, double ohm) {
    return LadderElementBuilder.builder().place(place).inductanceMh(mh).coilOhm(ohm).build();
  }

  @Test
  void twoResistorsDivideTheVoltage() {
    PassiveNetworkRequest request =
        PassiveNetworkRequestBuilder.builder()
            .elements(List.of(LadderElement.resistor(SERIES, 2), LadderElement.resistor(SHUNT, 4)))
            .loadOhm(4.0)
            .frequencies(Circuits.only(1000))
            .voltageV(8.0)
            .build();
    PassiveNetworkResult result = answer(request).result();
    // 2 + 4||4 = 4 ohm, half the voltage, 2 A
    assertEquals(4, result.points().get(0).modulusOhm(), 1e-12);
    assertEquals(-6.0206, result.points().get(0).levelDb(), 1e-4);
    assertEquals(4, result.lowestModulusOhm(), 1e-12);
    assertEquals(2, result.highestCurrentA(), 1e-12);
    assertEquals(4, result.dcOhm(), 1e-12);
  }

  @Test
  void aCapacitorOfTheLoadsResistanceLosesThreeDecibels() {
    double uf = 1e6 / (2 * Math.PI * 1000 * 4);
    Point point =
        answer(into(4, Circuits.only(1000), LadderElement.capacitor(SERIES, uf)))
            .result()
            .points()
            .get(0);
    assertEquals(-3.0103, point.levelDb(), 1e-4);
    assertEquals(45, point.levelPhaseDeg(), 1e-9);
    assertEquals(4 * Math.sqrt(2), point.modulusOhm(), 1e-9);
    assertEquals(-45, point.phaseDeg(), 1e-9);
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    // At 1 kHz: 1 mH and 0.3 ohm in the way is 0.3 + 6.2832j, 25 µF across is −6.3662j beside 4.
    PassiveNetworkResult result =
        answer(
                into(
                    4,
                    Circuits.only(1000),
                    coil(SERIES, 1, 0.3),
                    LadderElement.capacitor(SHUNT, 25)))
            .result();
    Point point = result.points().get(0);
    // 4||−6.3662j = 2.8677 − 1.8018j; in all 3.1677 + 4.4814j
    assertEquals(5.4879, point.modulusOhm(), 2e-4);
    assertEquals(54.745, point.phaseDeg(), 2e-3);
    // |2.8677 − 1.8018j|/5.4879 = 3.3868/5.4879
    assertEquals(-4.192, point.levelDb(), 1e-3);
    assertEquals(4.3, result.dcOhm(), 1e-12);
  }

  @Test
  void theLowestLoadOfASeriesResonanceAcrossIsFoundExactly() {
    // 1 mH and 25.3303 µF meet at 1000 Hz; there 1 ohm lies beside 4: 0.8.
    LadderElement dip =
        LadderElementBuilder.builder()
            .place(SHUNT)
            .capacitanceUf(1e9 / (4e6 * Math.PI * Math.PI))
            .inductanceMh(1.0)
            .resistanceOhm(1.0)
            .build();
    PassiveNetworkResult result = answer(into(4, null, dip)).result();
    assertEquals(0.8, result.lowestModulusOhm(), 1e-9);
    assertEquals(1000, result.lowestHz(), 0.01);
    assertEquals(0, result.lowestPhaseDeg(), 0.01);
    assertEquals(4, result.dcOhm(), 1e-12);
  }

  @Test
  void aCapacitorInTheWayBlocksDirectCurrent() {
    assertNull(
        answer(into(4, null, LadderElement.capacitor(SERIES, 47), coil(SHUNT, 1, 0)))
            .result()
            .dcOhm());
  }

  @Test
  void aCoilAcrossTheAmplifierIsAStop() {
    Answer<PassiveNetworkResult> answer = answer(into(4, null, coil(SHUNT, 1, 0.2)));
    assertEquals(Verdict.STOP, answer.verdict());
    assertEquals(List.of("coil-across-amplifier"), Answers.codes(answer));
    assertEquals(0.2 * 4 / 4.2, answer.findings().get(0).value(), 1e-12);
  }

  @Test
  void aCapacitorAcrossTheAmplifierIsAWarningUnlessAResistorIsWithIt() {
    assertEquals(
        List.of("capacitor-across-amplifier"),
        Answers.codes(answer(into(4, null, LadderElement.capacitor(SHUNT, 10)))));
    assertEquals(
        List.of(),
        Answers.codes(
            answer(
                into(
                    4,
                    null,
                    LadderElementBuilder.builder()
                        .place(SHUNT)
                        .capacitanceUf(10.0)
                        .resistanceOhm(4.0)
                        .build()))));
  }

  @Test
  void aLowPassForFourOhmLiftsADriverOfSixteen() {
    Answer<PassiveNetworkResult> answer =
        answer(into(16, null, coil(SERIES, 0.9, 0), LadderElement.capacitor(SHUNT, 28)));
    assertEquals(List.of("level-hump"), Answers.codes(answer));
    assertTrue(answer.result().highestLevelDb() > 6);
  }

  @Test
  void theLoadIsJudgedAsRatedLoadsAre() {
    assertEquals(List.of(), Answers.codes(answer(judged(5, 4))));
    assertEquals(List.of("network-load-below-rated"), Answers.codes(answer(judged(3.5, 4))));
    assertEquals(List.of("network-load-too-low"), Answers.codes(answer(judged(3, 4))));
  }

  @Test
  void anEmptyLadderIsRefused() {
    Fault fault = fault();
    assertEquals("not-allowed", fault.code());
    assertEquals("/elements", fault.pointer());
  }

  @Test
  void anElementWithoutPartsIsRefused() {
    Fault fault =
        fault(
            LadderElement.resistor(SERIES, 1), LadderElementBuilder.builder().place(SHUNT).build());
    assertEquals("element-empty", fault.code());
    assertEquals("/elements/1", fault.pointer());
    Fault lonely =
        fault(
            LadderElementBuilder.builder().place(SERIES).capacitanceUf(10.0).coilOhm(0.3).build());
    assertEquals("coil-resistance-without-coil", lonely.code());
    assertEquals("/elements/0/coil_ohm", lonely.pointer());
  }

  @Test
  void loopsWithoutResistanceAreRefused() {
    LadderElement series =
        LadderElementBuilder.builder().place(SHUNT).capacitanceUf(10.0).inductanceMh(1.0).build();
    LadderElement parallel =
        LadderElementBuilder.builder()
            .place(SERIES)
            .capacitanceUf(10.0)
            .inductanceMh(1.0)
            .wiring(IN_PARALLEL)
            .build();
    for (Fault fault : List.of(fault(series), fault(parallel), fault(coil(SHUNT, 1, 0)))) {
      assertEquals("zero-resistance-loop", fault.code());
      assertEquals("/elements/0/coil_ohm", fault.pointer());
    }
    Fault second = fault(coil(SERIES, 1, 0), coil(SHUNT, 1, 0));
    assertEquals("/elements/1/coil_ohm", second.pointer());
  }

  @Test
  void aCoilBehindAResistorOrACapacitorIsNoSuchLoop() {
    assertEquals(
        0.5,
        answer(into(4, null, LadderElement.resistor(SERIES, 0.5), coil(SHUNT, 1, 0)))
            .result()
            .dcOhm(),
        1e-12);
    assertNull(
        answer(into(4, null, LadderElement.capacitor(SERIES, 10), coil(SHUNT, 1, 0)))
            .result()
            .dcOhm());
  }

  @Test
  void aLosslessParallelPairAcrossIsOpenAtItsResonanceAndNothingElse() {
    double f = 1000;
    double uf = 1e9 / (4 * Math.PI * Math.PI * f * f);
    LadderElement tank =
        LadderElementBuilder.builder()
            .place(SHUNT)
            .capacitanceUf(uf)
            .inductanceMh(1.0)
            .wiring(IN_PARALLEL)
            .build();
    Point point =
        answer(into(4, Circuits.only(f), LadderElement.capacitor(SERIES, 1000), tank))
            .result()
            .points()
            .get(0);
    assertEquals(Math.hypot(4, 1 / (2 * Math.PI * f * 1e-3)), point.modulusOhm(), 1e-9);
  }

  @Test
  void exactlyOneLoadIsNeeded() {
    List<LadderElement> one = List.of(LadderElement.resistor(SERIES, 1));
    Driver driver = Circuits.woofer(0);
    List<Fault> none =
        Answers.faults(CALCULATION, PassiveNetworkRequestBuilder.builder().elements(one).build());
    assertEquals("exactly-one-of", none.get(0).code());
    List<Fault> both =
        Answers.faults(
            CALCULATION,
            PassiveNetworkRequestBuilder.builder()
                .elements(one)
                .driver(driver)
                .loadOhm(4.0)
                .build());
    assertEquals("exactly-one-of", both.get(0).code());
    List<Fault> box =
        Answers.faults(
            CALCULATION,
            PassiveNetworkRequestBuilder.builder()
                .elements(one)
                .box(Box.closed(20.0))
                .loadOhm(4.0)
                .build());
    assertEquals("needed-beside", box.get(0).code());
    assertEquals("/driver/vas_l", box.get(0).pointer());
  }
}
