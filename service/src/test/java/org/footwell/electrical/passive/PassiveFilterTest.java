package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.PassiveFilters.answer;
import static org.footwell.electrical.passive.PassiveFilters.eightOhms;
import static org.footwell.electrical.passive.PassiveFilters.fault;
import static org.footwell.electrical.passive.PassiveFilters.filter;
import static org.footwell.electrical.passive.PassiveFilters.result;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Step;
import org.footwell.electrical.passive.PassiveFilterResult.Corner;
import org.footwell.electrical.passive.PassiveFilterResult.Part;
import org.footwell.electrical.passive.PassiveFilterResult.Point;
import org.footwell.electrical.passive.PassiveFilterResult.Purpose;
import org.footwell.loudspeaker.CoilImpedance;
import org.footwell.parts.Box;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.LadderElement.Place;
import org.footwell.parts.PreferredSeries;
import org.footwell.physics.Phasor;
import org.junit.jupiter.api.Test;

class PassiveFilterTest {

  @Test
  void aFirstOrderHighPassIsOneCapacitor() {
    Part part =
        result(eightOhms().loadOhm(4.0).highPass(filter(Kind.BUTTERWORTH, 1, 1000))).parts().get(0);
    // 10⁶/(2π·1000·4)
    assertEquals(39.789, part.capacitanceUf(), 1e-3);
    assertEquals(39, part.nearestUf());
    assertEquals(-1.98, part.offPercent(), 0.005);
    assertEquals(Place.SERIES, part.place());
    assertEquals(Purpose.HIGH_PASS, part.purpose());
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    PassiveFilterRequestBuilder draft = eightOhms().lowPass(filter(Kind.LINKWITZ_RILEY, 2, 1000));
    PassiveFilterResult result = result(draft);
    // R/(π·f) and 10⁶/(4π·f·R)
    assertEquals(2.5465, result.parts().get(0).inductanceMh(), 1e-4);
    assertEquals(9.9472, result.parts().get(1).capacitanceUf(), 1e-4);
    assertEquals(2.7, result.parts().get(0).nearestMh());
    assertEquals(10, result.parts().get(1).nearestUf());
    Corner corner = result.corners().get(0);
    assertEquals(-6.0206, corner.targetDb(), 1e-4);
    assertEquals(-6.0206, corner.resistorDb(), 1e-4);
    // 1/(1 − ω²LC + jωL/R) with 2.7 mH and 10 µF: 1/(−0.06591 + 2.12058j)
    assertEquals(-6.533, corner.roundedDb(), 1e-3);
    assertNull(corner.driverDb());
    assertEquals(
        List.of("invert-one-way", "rounding-shifts-response"), Answers.codes(answer(draft)));
  }

  @Test
  void aSecondOrderButterworthIsTheTextbookPair() {
    List<Part> parts = result(eightOhms().highPass(filter(Kind.BUTTERWORTH, 2, 1000))).parts();
    // 10⁶/(2π·1000·8·√2) and 1000·8·√2/(2π·1000)
    assertEquals(14.067, parts.get(0).capacitanceUf(), 1e-3);
    assertEquals(1.8006, parts.get(1).inductanceMh(), 1e-4);
    assertEquals(Place.SHUNT, parts.get(1).place());
  }

  @Test
  void everyKindAndOrderHitsItsTargetIntoTheResistor() {
    for (Kind kind : Kind.values()) {
      for (int order = 1; order <= 4; order++) {
        Filter filter = filter(kind, order, 500);
        if (filter.possible()) {
          PassiveFilterRequestBuilder draft = eightOhms().lowPass(filter);
          result(draft).points().forEach(PassiveFilterTest::onTarget);
          draft.lowPass(null).highPass(filter);
          result(draft).points().forEach(PassiveFilterTest::onTarget);
        }
      }
    }
  }

  private static void onTarget(Point point) {
    assertEquals(point.targetDb(), point.resistorDb(), 1e-6, () -> "at " + point.frequencyHz());
  }

  @Test
  void aWideBandPassIsBothSidesAndACloseOneIsWarnedAbout() {
    PassiveFilterRequestBuilder draft =
        eightOhms()
            .highPass(filter(Kind.BUTTERWORTH, 2, 300))
            .lowPass(filter(Kind.BUTTERWORTH, 2, 5000))
            .series(PreferredSeries.E24);
    Answer<PassiveFilterResult> wide = answer(draft);
    assertEquals(4, wide.result().parts().size());
    assertEquals(-3.01, wide.result().corners().get(0).resistorDb(), 0.5);
    assertTrue(!Answers.codes(wide).contains("band-sides-interact"));
    draft.lowPass(filter(Kind.BUTTERWORTH, 2, 600));
    assertTrue(Answers.codes(answer(draft)).contains("band-sides-interact"));
  }

  /** Half of 40 W in the way, a quarter across, a quarter left for the driver. */
  @Test
  void aPadOfSixDecibelsTurnsThreeQuartersIntoHeat() {
    PassiveFilterRequestBuilder draft = eightOhms().padDb(20 * Math.log10(2));
    assertNull(result(draft).parts().get(0).heatW());
    draft.powerW(40.0);
    List<Part> parts = result(draft).parts();
    assertEquals(0.5, parts.get(0).heatShare(), 1e-12);
    assertEquals(20, parts.get(0).heatW(), 1e-9);
    assertEquals(0.25, parts.get(1).heatShare(), 1e-12);
    assertEquals(10, parts.get(1).heatW(), 1e-9);
    assertEquals(List.of("pad-gets-hot"), Answers.codes(answer(draft)));
    draft.powerW(9.9);
    assertEquals(List.of(), Answers.codes(answer(draft)));
  }

  @Test
  void aPadOfSixDecibelsHalvesTheVoltageAndKeepsTheLoad() {
    PassiveFilterRequestBuilder draft =
        eightOhms()
            .padDb(20 * Math.log10(2))
            .series(PreferredSeries.E24)
            .frequencies(Circuits.only(1000));
    PassiveFilterResult result = result(draft);
    assertEquals(4, result.parts().get(0).resistanceOhm(), 1e-9);
    assertEquals(8, result.parts().get(1).resistanceOhm(), 1e-9);
    assertEquals(-6.0206, result.points().get(0).resistorDb(), 1e-4);
    assertEquals(3.9, result.parts().get(0).nearestOhm());
    assertEquals(8.2, result.parts().get(1).nearestOhm());
    // 3.9 + 8||8.2
    assertEquals(3.9 + 8 * 8.2 / 16.2, result.lowestModulusOhm(), 1e-9);
  }

  @Test
  void theCompensationOfAnIdealCoilIsTheTextbookOne() {
    PassiveFilterRequestBuilder draft =
        eightOhms()
            .loadOhm(4.0)
            .compensate(true)
            .driver(
                DriverBuilder.builder().reOhm(4.0).leMh(0.4).fsHz(50.0).qms(4.0).qes(0.5).build());
    List<Part> parts = result(draft).parts();
    assertEquals(4, parts.get(0).resistanceOhm(), 1e-12);
    // 0.4 mH/16
    assertEquals(25, parts.get(1).capacitanceUf(), 1e-9);
    assertEquals(Purpose.COMPENSATION, parts.get(1).purpose());
  }

  @Test
  void theCompensationOfALossyCoilIsExactAtTheLowPass() {
    Driver driver =
        DriverBuilder.builder()
            .reOhm(4.0)
            .leMh(0.4)
            .leExponent(0.6)
            .fsHz(20.0)
            .qms(4.0)
            .qes(0.5)
            .build();
    PassiveFilterRequestBuilder draft =
        eightOhms()
            .loadOhm(4.0)
            .compensate(true)
            .lowPass(filter(Kind.BUTTERWORTH, 2, 2500))
            .driver(driver);
    Phasor coil = CoilImpedance.of(driver).at(2500);
    Part resistor = result(draft).parts().get(2);
    Part capacitor = result(draft).parts().get(3);
    Phasor compensation =
        new Phasor(
            resistor.resistanceOhm(), -1e6 / (2 * Math.PI * 2500 * capacitor.capacitanceUf()));
    Phasor both = new Phasor(4, 0).plus(coil).parallel(compensation);
    assertEquals(4, both.re(), 1e-9);
    assertEquals(0, both.im(), 1e-9);
  }

  @Test
  void theElementsGoIntoThePassiveNetworkAsTheyAre() {
    Driver woofer = Circuits.woofer(0);
    Box box = Box.closed(25.0);
    PassiveFilterRequestBuilder draft =
        eightOhms()
            .loadOhm(3.4)
            .lowPass(filter(Kind.BESSEL, 3, 800))
            .padDb(3.0)
            .compensate(true)
            .driver(woofer)
            .box(box);
    PassiveFilterResult filter = result(draft);
    PassiveNetworkResult network =
        Answers.of(
                new PassiveNetwork(),
                PassiveNetworkRequestBuilder.builder()
                    .elements(filter.elements())
                    .driver(woofer)
                    .box(box)
                    .build())
            .result();
    assertEquals(filter.lowestModulusOhm(), network.lowestModulusOhm(), 1e-12);
    for (int i = 0; i < filter.points().size(); i++) {
      assertEquals(filter.points().get(i).driverDb(), network.points().get(i).levelDb(), 1e-12);
    }
  }

  @Test
  void everyPartIsAStepOfTheWorkings() {
    Answer<PassiveFilterResult> answer =
        Answers.withWorkings(
            PassiveFilters.CALCULATION,
            eightOhms().highPass(filter(Kind.BUTTERWORTH, 3, 1000)).padDb(6.0).build());
    assertEquals(
        answer.result().parts().stream().map(PassiveFilterTest::value).toList(),
        answer.workings().stream()
            .filter(step -> !step.quantity().endsWith("heat_share"))
            .filter(step -> !step.quantity().equals("lowest_allowed_ohm"))
            .map(Step::value)
            .limit(answer.result().parts().size())
            .toList());
  }

  private static Double value(Part part) {
    return part.capacitanceUf() != null
        ? part.capacitanceUf()
        : part.inductanceMh() != null ? part.inductanceMh() : part.resistanceOhm();
  }

  @Test
  void aDriverAtItsResonanceLiftsAHighPassAndIsSaidTo() {
    PassiveFilterRequestBuilder draft =
        eightOhms()
            .loadOhm(5.5)
            .highPass(filter(Kind.BUTTERWORTH, 2, 2000))
            .driver(
                DriverBuilder.builder()
                    .reOhm(5.5)
                    .leMh(0.05)
                    .leExponent(0.7)
                    .fsHz(1100.0)
                    .qms(3.0)
                    .qes(1.0)
                    .build());
    Answer<PassiveFilterResult> answer = answer(draft);
    assertTrue(answer.result().driverDeviationDb() > 2);
    assertTrue(Answers.codes(answer).contains("driver-shifts-response"));
  }

  @Test
  void aLoadThatIsNotTheCompensatedDriverIsRemarked() {
    PassiveFilterRequestBuilder draft =
        eightOhms()
            .loadOhm(4.0)
            .compensate(true)
            .driver(
                DriverBuilder.builder()
                    .reOhm(3.2)
                    .leMh(0.4)
                    .leExponent(0.7)
                    .fsHz(50.0)
                    .qms(4.0)
                    .qes(0.5)
                    .build());
    assertTrue(Answers.codes(answer(draft)).contains("load-unlike-driver"));
  }

  @Test
  void aBandPassTurnedRoundIsRefused() {
    PassiveFilterRequestBuilder draft =
        eightOhms()
            .highPass(filter(Kind.BUTTERWORTH, 2, 3000))
            .lowPass(filter(Kind.BUTTERWORTH, 2, 300));
    Fault fault = fault(draft);
    assertEquals("not-ascending", fault.code());
    assertEquals("/low_pass/frequency_hz", fault.pointer());
    assertEquals("300.0", fault.given());
    draft.lowPass(filter(Kind.BUTTERWORTH, 2, 3000));
    assertEquals("not-ascending", fault(draft).code());
  }

  @Test
  void ordersThatAreNotBuiltAreRefused() {
    PassiveFilterRequestBuilder draft = eightOhms().highPass(filter(Kind.BUTTERWORTH, 5, 3000));
    assertEquals("order-not-passive", fault(draft).code());
    draft.highPass(filter(Kind.LINKWITZ_RILEY, 3, 3000));
    Fault odd = fault(draft);
    assertEquals("order-not-linkwitz-riley", odd.code());
    assertEquals("/high_pass/order", odd.pointer());
  }

  /** Its part has no preferred value near it: the search for one once went on for ever. */
  @Test
  void aCoilOfNextToNothingIsRefusedAtOnce() {
    Driver driver =
        DriverBuilder.builder()
            .reOhm(3.4)
            .leMh(1e-320)
            .leExponent(0.7)
            .fsHz(60.0)
            .qms(4.0)
            .qes(0.5)
            .build();
    Fault fault =
        fault(
            PassiveFilterRequestBuilder.builder()
                .loadOhm(3.4)
                .lowPass(filter(Kind.LINKWITZ_RILEY, 2, 2500))
                .compensate(true)
                .driver(driver));
    assertEquals("part-out-of-reach", fault.code());
    assertEquals("/compensate", fault.pointer());
  }

  @Test
  void nothingToDesignOrNobodyToDesignForIsRefused() {
    assertEquals("nothing-to-design", fault(eightOhms()).code());
    PassiveFilterRequestBuilder draft = eightOhms().compensate(true);
    assertEquals("driver-missing", fault(draft).code());
    draft.driver(DriverBuilder.builder().reOhm(4.0).leMh(0.0).fsHz(50.0).qms(4.0).qes(0.5).build());
    Fault fault = fault(draft);
    assertEquals("nothing-to-compensate", fault.code());
    assertEquals("/driver/le_mh", fault.pointer());
    draft = eightOhms();
    draft.padDb(3.0).box(Box.closed(20.0));
    assertEquals("needed-beside", fault(draft).code());
  }
}
