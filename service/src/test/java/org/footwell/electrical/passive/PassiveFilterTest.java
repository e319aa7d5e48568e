package org.footwell.electrical.passive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Step;
import org.footwell.electrical.impedance.DriverImpedance;
import org.footwell.electrical.impedance.ImpedanceBox;
import org.footwell.electrical.impedance.ImpedanceDriver;
import org.footwell.electrical.passive.LadderElement.Place;
import org.footwell.electrical.passive.PassiveFilterResult.Corner;
import org.footwell.electrical.passive.PassiveFilterResult.Part;
import org.footwell.electrical.passive.PassiveFilterResult.Point;
import org.footwell.electrical.passive.PassiveFilterResult.Purpose;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.PreferredSeries;
import org.footwell.physics.Phasor;
import org.junit.jupiter.api.Test;

class PassiveFilterTest {

  private static final PassiveFilter CALCULATION = new PassiveFilter();

  /** A request in the making: 8 ohm, nothing else. */
  static final class Draft {
    double loadOhm = 8;
    Filter highPass;
    Filter lowPass;
    Double padDb;
    Double powerW;
    boolean compensate;
    ImpedanceDriver driver;
    ImpedanceBox box;
    PreferredSeries series;
    CurveFrequencies frequencies;
    Double amplifierMinimumOhm;

    PassiveFilterRequest request() {
      return PassiveFilterRequestBuilder.builder()
          .loadOhm(loadOhm)
          .highPass(highPass)
          .lowPass(lowPass)
          .padDb(padDb)
          .powerW(powerW)
          .compensate(compensate)
          .driver(driver)
          .box(box)
          .series(series)
          .frequencies(frequencies)
          .amplifierMinimumOhm(amplifierMinimumOhm)
          .build();
    }

    Answer<PassiveFilterResult> answer() {
      return Answers.of(CALCULATION, request());
    }

    Fault fault() {
      List<Fault> faults = Answers.faults(CALCULATION, request());
      assertEquals(1, faults.size(), faults::toString);
      return faults.get(0);
    }
  }

  static Filter filter(Kind kind, int order, double hz) {
    return new Filter(kind, order, hz, null);
  }

  @Test
  void aFirstOrderHighPassIsOneCapacitor() {
    Draft draft = new Draft();
    draft.loadOhm = 4;
    draft.highPass = filter(Kind.BUTTERWORTH, 1, 1000);
    Part part = draft.answer().result().parts().get(0);
    // 10⁶/(2π·1000·4)
    assertEquals(39.789, part.capacitanceUf(), 1e-3);
    assertEquals(39, part.nearestUf());
    assertEquals(-1.98, part.offPercent(), 0.005);
    assertEquals(Place.SERIES, part.place());
    assertEquals(Purpose.HIGH_PASS, part.purpose());
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    Draft draft = new Draft();
    draft.lowPass = filter(Kind.LINKWITZ_RILEY, 2, 1000);
    PassiveFilterResult result = draft.answer().result();
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
        List.of("invert-one-way", "rounding-shifts-response"), Answers.codes(draft.answer()));
  }

  @Test
  void aSecondOrderButterworthIsTheTextbookPair() {
    Draft draft = new Draft();
    draft.highPass = filter(Kind.BUTTERWORTH, 2, 1000);
    List<Part> parts = draft.answer().result().parts();
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
          Draft draft = new Draft();
          draft.lowPass = filter;
          draft.answer().result().points().forEach(PassiveFilterTest::onTarget);
          draft.lowPass = null;
          draft.highPass = filter;
          draft.answer().result().points().forEach(PassiveFilterTest::onTarget);
        }
      }
    }
  }

  private static void onTarget(Point point) {
    assertEquals(point.targetDb(), point.resistorDb(), 1e-6, () -> "at " + point.frequencyHz());
  }

  @Test
  void aWideBandPassIsBothSidesAndACloseOneIsWarnedAbout() {
    Draft draft = new Draft();
    draft.highPass = filter(Kind.BUTTERWORTH, 2, 300);
    draft.lowPass = filter(Kind.BUTTERWORTH, 2, 5000);
    draft.series = PreferredSeries.E24;
    Answer<PassiveFilterResult> wide = draft.answer();
    assertEquals(4, wide.result().parts().size());
    assertEquals(-3.01, wide.result().corners().get(0).resistorDb(), 0.5);
    assertTrue(!Answers.codes(wide).contains("band-sides-interact"));
    draft.lowPass = filter(Kind.BUTTERWORTH, 2, 600);
    assertTrue(Answers.codes(draft.answer()).contains("band-sides-interact"));
  }

  /** Half of 40 W in the way, a quarter across, a quarter left for the driver. */
  @Test
  void aPadOfSixDecibelsTurnsThreeQuartersIntoHeat() {
    Draft draft = new Draft();
    draft.padDb = 20 * Math.log10(2);
    assertNull(draft.answer().result().parts().get(0).heatW());
    draft.powerW = 40.0;
    List<Part> parts = draft.answer().result().parts();
    assertEquals(0.5, parts.get(0).heatShare(), 1e-12);
    assertEquals(20, parts.get(0).heatW(), 1e-9);
    assertEquals(0.25, parts.get(1).heatShare(), 1e-12);
    assertEquals(10, parts.get(1).heatW(), 1e-9);
    assertEquals(List.of("pad-gets-hot"), Answers.codes(draft.answer()));
    draft.powerW = 9.9;
    assertEquals(List.of(), Answers.codes(draft.answer()));
  }

  @Test
  void aPadOfSixDecibelsHalvesTheVoltageAndKeepsTheLoad() {
    Draft draft = new Draft();
    draft.padDb = 20 * Math.log10(2);
    draft.series = PreferredSeries.E24;
    draft.frequencies = Circuits.only(1000);
    PassiveFilterResult result = draft.answer().result();
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
    Draft draft = new Draft();
    draft.loadOhm = 4;
    draft.compensate = true;
    draft.driver = new ImpedanceDriver(4.0, 0.4, null, null, 50.0, 4.0, 0.5, null);
    List<Part> parts = draft.answer().result().parts();
    assertEquals(4, parts.get(0).resistanceOhm(), 1e-12);
    // 0.4 mH/16
    assertEquals(25, parts.get(1).capacitanceUf(), 1e-9);
    assertEquals(Purpose.COMPENSATION, parts.get(1).purpose());
  }

  @Test
  void theCompensationOfALossyCoilIsExactAtTheLowPass() {
    ImpedanceDriver driver = new ImpedanceDriver(4.0, 0.4, 0.6, null, 20.0, 4.0, 0.5, null);
    Draft draft = new Draft();
    draft.loadOhm = 4;
    draft.compensate = true;
    draft.lowPass = filter(Kind.BUTTERWORTH, 2, 2500);
    draft.driver = driver;
    Phasor coil = new DriverImpedance(driver, null).coil(2500);
    Part resistor = draft.answer().result().parts().get(2);
    Part capacitor = draft.answer().result().parts().get(3);
    Phasor compensation =
        new Phasor(
            resistor.resistanceOhm(), -1e6 / (2 * Math.PI * 2500 * capacitor.capacitanceUf()));
    Phasor both = new Phasor(4, 0).plus(coil).parallel(compensation);
    assertEquals(4, both.re(), 1e-9);
    assertEquals(0, both.im(), 1e-9);
  }

  @Test
  void theElementsGoIntoThePassiveNetworkAsTheyAre() {
    Draft draft = new Draft();
    draft.loadOhm = 3.4;
    draft.lowPass = filter(Kind.BESSEL, 3, 800);
    draft.padDb = 3.0;
    draft.compensate = true;
    draft.driver = Circuits.woofer(0);
    draft.box = new ImpedanceBox(25.0, null, null);
    PassiveFilterResult filter = draft.answer().result();
    PassiveNetworkResult network =
        Answers.of(
                new PassiveNetwork(),
                new PassiveNetworkRequest(
                    filter.elements(), draft.driver, draft.box, null, null, null, null))
            .result();
    assertEquals(filter.lowestModulusOhm(), network.lowestModulusOhm(), 1e-12);
    for (int i = 0; i < filter.points().size(); i++) {
      assertEquals(filter.points().get(i).driverDb(), network.points().get(i).levelDb(), 1e-12);
    }
  }

  @Test
  void everyPartIsAStepOfTheWorkings() {
    Draft draft = new Draft();
    draft.highPass = filter(Kind.BUTTERWORTH, 3, 1000);
    draft.padDb = 6.0;
    Answer<PassiveFilterResult> answer = Answers.withWorkings(CALCULATION, draft.request());
    assertEquals(
        answer.result().parts().stream().map(PassiveFilterTest::value).toList(),
        answer.workings().stream()
            .filter(step -> !step.quantity().endsWith("heat_share"))
            .filter(step -> !step.quantity().equals("lowest_allowed_ohm"))
            .map(Step::value)
            .toList());
  }

  private static Double value(Part part) {
    return part.capacitanceUf() != null
        ? part.capacitanceUf()
        : part.inductanceMh() != null ? part.inductanceMh() : part.resistanceOhm();
  }

  @Test
  void aDriverAtItsResonanceLiftsAHighPassAndIsSaidTo() {
    Draft draft = new Draft();
    draft.loadOhm = 5.5;
    draft.highPass = filter(Kind.BUTTERWORTH, 2, 2000);
    draft.driver = new ImpedanceDriver(5.5, 0.05, 0.7, null, 1100.0, 3.0, 1.0, null);
    Answer<PassiveFilterResult> answer = draft.answer();
    assertTrue(answer.result().driverDeviationDb() > 2);
    assertTrue(Answers.codes(answer).contains("driver-shifts-response"));
  }

  @Test
  void aLoadThatIsNotTheCompensatedDriverIsRemarked() {
    Draft draft = new Draft();
    draft.loadOhm = 4;
    draft.compensate = true;
    draft.driver = new ImpedanceDriver(3.2, 0.4, 0.7, null, 50.0, 4.0, 0.5, null);
    assertTrue(Answers.codes(draft.answer()).contains("load-unlike-driver"));
  }

  @Test
  void aBandPassTurnedRoundIsRefused() {
    Draft draft = new Draft();
    draft.highPass = filter(Kind.BUTTERWORTH, 2, 3000);
    draft.lowPass = filter(Kind.BUTTERWORTH, 2, 300);
    Fault fault = draft.fault();
    assertEquals("band-reversed", fault.code());
    assertEquals("/high_pass/frequency_hz", fault.pointer());
    assertEquals("3000.0", fault.given());
    draft.lowPass = filter(Kind.BUTTERWORTH, 2, 3000);
    assertEquals("band-reversed", draft.fault().code());
  }

  @Test
  void ordersThatAreNotBuiltAreRefused() {
    Draft draft = new Draft();
    draft.highPass = filter(Kind.BUTTERWORTH, 5, 3000);
    assertEquals("order-not-passive", draft.fault().code());
    draft.highPass = filter(Kind.LINKWITZ_RILEY, 3, 3000);
    Fault odd = draft.fault();
    assertEquals("order-not-linkwitz-riley", odd.code());
    assertEquals("/high_pass/order", odd.pointer());
  }

  @Test
  void nothingToDesignOrNobodyToDesignForIsRefused() {
    assertEquals("nothing-to-design", new Draft().fault().code());
    Draft draft = new Draft();
    draft.compensate = true;
    assertEquals("driver-missing", draft.fault().code());
    draft.driver = new ImpedanceDriver(4.0, 0.0, null, null, 50.0, 4.0, 0.5, null);
    Fault fault = draft.fault();
    assertEquals("nothing-to-compensate", fault.code());
    assertEquals("/driver/le_mh", fault.pointer());
    draft = new Draft();
    draft.padDb = 3.0;
    draft.box = new ImpedanceBox(20.0, null, null);
    assertEquals("driver-missing", draft.fault().code());
  }
}
