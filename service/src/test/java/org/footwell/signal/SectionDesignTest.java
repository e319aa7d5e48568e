package org.footwell.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.physics.AnalogFilter;
import org.junit.jupiter.api.Test;
import uk.me.berndporr.iirj.Butterworth;

class SectionDesignTest {

  private static Cascade lowPass(Kind kind, int order, double corner, double rate) {
    return Cascade.of(SectionDesign.of(Filter.of(kind, order, corner).lowPass(), rate));
  }

  private static double db(Biquad section, double frequency, double rate) {
    return section.at(CirclePoint.of(frequency, rate)).levelDb();
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    List<Biquad> sections = lowPass(Kind.LINKWITZ_RILEY, 2, 1000, 48000).sections();
    assertEquals(2, sections.size());
    assertEquals(0.0655435, SectionDesign.PREWARP.at(1000, 48000), 5e-8);
    for (Biquad section : sections) {
      assertEquals(0.0615118, section.b0(), 5e-8);
      assertEquals(0.0615118, section.b1(), 5e-8);
      assertEquals(-0.8769765, section.a1(), 5e-8);
      assertEquals(0, section.b2());
      assertEquals(0, section.a2());
    }
  }

  @Test
  void cornersAreThreeDbForButterworthAndSixForLinkwitzRileyAtAnyRate() {
    for (double rate : new double[] {44100, 192000}) {
      CirclePoint p = CirclePoint.of(20, rate);
      for (int order = 1; order <= 8; order++) {
        assertEquals(-3.0103, lowPass(Kind.BUTTERWORTH, order, 20, rate).at(p).levelDb(), 1e-5);
      }
      for (int order = 2; order <= 8; order += 2) {
        double level = lowPass(Kind.LINKWITZ_RILEY, order, 20, rate).at(p).levelDb();
        assertEquals(-6.0206, level, 1e-5);
      }
    }
  }

  /** The bilinear transform does nothing but bend the axis of frequencies. */
  @Test
  void atTwentyHertzAndTheHighestRateTheResponseIsTheAnalogOneAtTheWarpedFrequency() {
    double rate = 192000;
    for (Kind kind : Kind.values()) {
      AnalogFilter low = Filter.of(kind, 8, 20.0).lowPass();
      AnalogFilter high = Filter.of(kind, 8, 20.0).highPass();
      for (double f : new double[] {1, 5, 20, 100, 5000, 90000}) {
        double warped = 20 * Math.tan(Math.PI * f / rate) / Math.tan(Math.PI * 20 / rate);
        CirclePoint p = CirclePoint.of(f, rate);
        assertEquals(
            Math.max(-300, low.magnitudeDb(warped)),
            Cascade.of(SectionDesign.of(low, rate)).at(p).levelDb(),
            1e-6);
        assertEquals(
            Math.max(-300, high.magnitudeDb(warped)),
            Cascade.of(SectionDesign.of(high, rate)).at(p).levelDb(),
            1e-6);
      }
    }
  }

  @Test
  void anotherLibraryHasTheSameButterworthFilters() {
    for (int order = 1; order <= 8; order++) {
      Butterworth theirLow = new Butterworth();
      theirLow.lowPass(order, 48000, 2500);
      Butterworth theirHigh = new Butterworth();
      theirHigh.highPass(order, 48000, 2500);
      Filter filter = Filter.of(Kind.BUTTERWORTH, order, 2500.0);
      Cascade low = Cascade.of(SectionDesign.of(filter.lowPass(), 48000));
      Cascade high = Cascade.of(SectionDesign.of(filter.highPass(), 48000));
      for (double f : new double[] {300, 1000, 2500, 4000, 12000, 20000}) {
        CirclePoint p = CirclePoint.of(f, 48000);
        same(theirLow.response(f / 48000), low.at(p));
        same(theirHigh.response(f / 48000), high.at(p));
      }
    }
  }

  private static void same(org.apache.commons.math3.complex.Complex theirs, Response ours) {
    assertEquals(theirs.getReal(), ours.gain().re(), 1e-9);
    assertEquals(theirs.getImaginary(), ours.gain().im(), 1e-9);
  }

  @Test
  void anotherLibraryHasTheSameCoefficientsOfTheSecondOrder() {
    Butterworth theirs = new Butterworth();
    theirs.lowPass(2, 192000, 20);
    Biquad ours = lowPass(Kind.BUTTERWORTH, 2, 20, 192000).sections().get(0);
    assertEquals(theirs.getBiquad(0).getA1() / theirs.getBiquad(0).getA0(), ours.a1(), 1e-12);
    assertEquals(theirs.getBiquad(0).getA2() / theirs.getBiquad(0).getA0(), ours.a2(), 1e-12);
  }

  @Test
  void aPeakHasItsGainAtItsCentreAndHalfOfItAtTheEdgesOfTheBand() {
    Biquad peak = SectionDesign.peak(100, 2, 8, 96000);
    assertEquals(8, db(peak, 100, 96000), 1e-9);
    // f² ± f·f0/Q = f0²: 78.078 and 128.078 Hz, half of 8 dB; far below half the rate.
    assertEquals(4, db(peak, 78.0776, 96000), 1e-4);
    assertEquals(4, db(peak, 128.0776, 96000), 1e-4);
  }

  @Test
  void aCutUndoesALift() {
    for (SectionKind kind :
        List.of(
            SectionKind.PEAK,
            SectionKind.LOW_SHELF,
            SectionKind.HIGH_SHELF,
            SectionKind.LOW_SHELF_1,
            SectionKind.HIGH_SHELF_1)) {
      Cascade both =
          Cascade.of(List.of(kind.design(300, 1.3, 7, 48000), kind.design(300, 1.3, -7, 48000)));
      for (double f : new double[] {30, 300, 3000, 23000}) {
        Response here = both.at(CirclePoint.of(f, 48000));
        assertEquals(0, here.levelDb(), 1e-9);
        assertEquals(0, here.phaseDeg(), 1e-9);
        assertEquals(0, here.delaySamples(), 1e-6);
      }
    }
  }

  @Test
  void shelvesHaveHalfTheirGainAtTheirFrequencyAllOfItBeyondAndNoneOnTheOtherSide() {
    for (SectionKind low : List.of(SectionKind.LOW_SHELF, SectionKind.LOW_SHELF_1)) {
      Biquad shelf = low.design(1000, 0.7071, 6, 48000);
      assertEquals(6, db(shelf, 0.1, 48000), 1e-5);
      assertEquals(3, db(shelf, 1000, 48000), 1e-9);
      assertEquals(0, db(shelf, 23999.9, 48000), 1e-5);
    }
    for (SectionKind high : List.of(SectionKind.HIGH_SHELF, SectionKind.HIGH_SHELF_1)) {
      Biquad shelf = high.design(1000, 0.7071, -6, 48000);
      assertEquals(0, db(shelf, 0.1, 48000), 1e-5);
      assertEquals(-3, db(shelf, 1000, 48000), 1e-9);
      assertEquals(-6, db(shelf, 23999.9, 48000), 1e-5);
    }
  }

  @Test
  void allPassesTurnThePhaseAndLeaveTheLevel() {
    CirclePoint centre = CirclePoint.of(500, 48000);
    Response first = SectionDesign.allPassFirst(500, 48000).at(centre);
    assertEquals(-90, first.phaseDeg(), 1e-9);
    Response second = SectionDesign.allPass(500, 0.8, 48000).at(centre);
    assertEquals(180, Math.abs(second.phaseDeg()), 1e-9);
    for (double f : new double[] {20, 500, 20000}) {
      CirclePoint p = CirclePoint.of(f, 48000);
      assertEquals(0, SectionDesign.allPassFirst(500, 48000).at(p).levelDb(), 1e-9);
      assertEquals(0, SectionDesign.allPass(500, 0.8, 48000).at(p).levelDb(), 1e-9);
    }
  }

  @Test
  void aNotchTakesItsFrequencyOutAndIsThreeDbDownAtTheEdgesOfItsBand() {
    Biquad notch = SectionDesign.notch(100, 2, 96000);
    assertTrue(db(notch, 100, 96000) < -200);
    assertEquals(-3.0103, db(notch, 78.0776, 96000), 1e-3);
  }

  @Test
  void groupDelayIsTheSlopeOfThePhase() {
    Cascade cascade =
        Cascade.of(
            List.of(
                SectionDesign.peak(200, 3, 9, 48000),
                SectionDesign.highShelf(4000, 0.6, -5, 48000),
                SectionDesign.allPass(800, 1.5, 48000)));
    for (double f : new double[] {50, 195, 790, 6000, 20000}) {
      double step = 1e-3;
      Response before = cascade.at(CirclePoint.of(f - step, 48000));
      Response after = cascade.at(CirclePoint.of(f + step, 48000));
      double turned = after.gain().over(before.gain()).phaseDeg();
      assertEquals(
          -turned / 360 * 48000 / (2 * step),
          cascade.at(CirclePoint.of(f, 48000)).delaySamples(),
          1e-4);
    }
  }

  @Test
  void theGroupDelayOfASumIsTheSlopeOfItsPhase() {
    Cascade low = lowPass(Kind.BUTTERWORTH, 3, 900, 48000);
    Cascade late = lowPass(Kind.BESSEL, 4, 5000, 48000);
    for (double f : new double[] {100, 900, 3000}) {
      double step = 1e-3;
      Response before = sum(low, late, f - step);
      Response after = sum(low, late, f + step);
      double turned = after.gain().over(before.gain()).phaseDeg();
      assertEquals(-turned / 360 * 48000 / (2 * step), sum(low, late, f).delaySamples(), 1e-4);
    }
  }

  private static Response sum(Cascade one, Cascade other, double f) {
    CirclePoint p = CirclePoint.of(f, 48000);
    return Response.sum(List.of(one.at(p), other.at(p).scaled(-0.7, 3.5, p)));
  }

  @Test
  void sectionsInARowMultiply() {
    CirclePoint p = CirclePoint.of(700, 48000);
    Biquad peak = SectionDesign.peak(800, 1, 5, 48000);
    Biquad shelf = SectionDesign.lowShelf(300, 0.7, -3, 48000);
    Response both = Cascade.of(List.of(peak, shelf)).at(p);
    Response product = peak.at(p).times(shelf.at(p));
    assertEquals(product.levelDb(), both.levelDb(), 1e-12);
    assertEquals(product.delaySamples(), both.delaySamples(), 1e-12);
    assertEquals(peak.power(p) * shelf.power(p), Cascade.of(List.of(peak, shelf)).power(p), 1e-12);
    assertEquals(Response.WIRE, Biquad.WIRE.at(p));
  }

  @Test
  void polesOnOrBeyondTheCircleAreNotStable() {
    assertEquals(0.9, new Biquad(1, 0, 0, -0.9, 0).poleRadius(), 1e-12);
    assertEquals(0.8, new Biquad(1, 0, 0, 0, 0.64).poleRadius(), 1e-12);
    assertTrue(new Biquad(1, 0, 0, -1.9, 0.95).stable());
    assertFalse(new Biquad(1, 0, 0, -2, 1).stable());
    assertFalse(new Biquad(1, 0, 0, -2, 0.999).stable());
    assertFalse(new Biquad(1, 0, 0, 0, 1.01).stable());
    assertFalse(new Biquad(1, 0, 0, 1.0, 0).stable());
  }

  @Test
  void wordsRoundToTheNearestStepAndEndWhereTheyEnd() {
    CoefficientFormat word = new CoefficientFormat(CoefficientFormat.Kind.FIXED, 8, 6);
    // Steps of 1/64 from −2 to 127/64.
    Biquad rounded = word.rounded(new Biquad(0.3, -3, 2.5, -1.99, 1.984375));
    assertEquals(new Biquad(19 / 64.0, -2, 127 / 64.0, -127 / 64.0, 127 / 64.0), rounded);
    assertFalse(word.holds(new Biquad(0.3, -3, 0, 0, 0)));
    assertFalse(word.holds(new Biquad(0.3, 2, 0, 0, 0)));
    assertTrue(word.holds(new Biquad(0.3, -2, 1.984, 0, 0)));
    assertEquals(127 / 64.0, word.highest());
    CoefficientFormat single = new CoefficientFormat(CoefficientFormat.Kind.FLOAT32, null, null);
    assertEquals((double) 0.1f, single.rounded(new Biquad(0.1, 0, 0, 0, 0)).b0());
    assertEquals(0.1, CoefficientFormat.asCalculated().rounded(new Biquad(0.1, 0, 0, 0, 0)).b0());
  }
}
