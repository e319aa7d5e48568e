package org.footwell.acoustic.enclosure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.acoustic.enclosure.VentedBoxResult.Alignment;
import org.footwell.acoustic.enclosure.VentedBoxResult.Alignment.Family;
import org.footwell.calculation.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VentedAlignmentTest {

  private static BoxDraft driver(double qts, double ql) {
    BoxDraft draft = new BoxDraft().qts(qts).untuned();
    draft.ql = ql;
    return draft;
  }

  /** B4 as Thiele and Small print it; the others by the size of their ripple. */
  @ParameterizedTest
  @CsvSource({
    "0.30, 7, QUASI_BUTTERWORTH, 0",
    "0.383, 100000, BUTTERWORTH, 0",
    "0.405, 7, BUTTERWORTH, 0",
    "0.50, 7, CHEBYSHEV, 0.07",
    "0.55, 7, CHEBYSHEV, 0.23"
  })
  void theDriverAndItsLeaksDecideTheFamily(double qts, double ql, Family family, double ripple) {
    VentedBoxResult r = driver(qts, ql).vented();
    assertEquals(family, r.alignment().family());
    assertEquals(ripple, r.alignment().rippleDb(), 0.005);
    assertEquals(r.alignment().rippleDb(), r.response().peakDb(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource({"0.383, 100000, 1.414", "0.405, 7, 1.061"})
  void theMaximallyFlatBoxIsTheOneThatIsPrinted(double qts, double ql, double vasOverVb) {
    BoxDraft draft = driver(qts, ql);
    VentedBoxResult r = draft.vented();
    assertEquals(vasOverVb, draft.vas / r.alignment().volumeL(), 0.005);
    assertEquals(1, r.alignment().fbHz() / draft.fs, 0.002);
    assertEquals(1, r.response().f3Hz() / draft.fs, 0.002);
  }

  /** |G|² = y⁸/(y⁸ + c·y² + 1): c from one frequency must do at every other. */
  @Test
  void aDriverOfLowQFallsOffLikeAQuasiButterworthFilter() {
    BoxDraft draft = driver(0.25, 7);
    draft.diameter = 50.0;
    Alignment found = draft.vented().alignment();
    draft.volume = found.volumeL();
    draft.fb = found.fbHz();
    double unit = Math.sqrt(draft.fs * found.fbHz());
    double[] ys = {0.5, 0.8, 1.2, 2, 4};
    draft.at(0.5 * unit, 0.8 * unit, 1.2 * unit, 2 * unit, 4 * unit);
    VentedBoxResult r = draft.vented();
    double c = Double.NaN;
    for (int i = 0; i < ys.length; i++) {
      double db = r.points().get(i).levelDbSpl() - r.response().referenceLevelDbSpl();
      double y8 = Math.pow(ys[i], 8);
      double here = (y8 / Math.pow(10, db / 10) - y8 - 1) / (ys[i] * ys[i]);
      c = i == 0 ? here : c;
      assertEquals(c, here, 1e-6 * c);
    }
    assertTrue(c > 0);
  }

  @Test
  void theBoxThatIsFoundIsAnsweredLikeOneThatIsGiven() {
    BoxDraft draft = driver(0.45, 7);
    VentedBoxResult found = draft.vented();
    VentedBoxResult given =
        draft.tuned(found.alignment().volumeL(), found.alignment().fbHz()).vented();
    assertNull(given.alignment());
    assertEquals(given.volumeL(), found.volumeL());
    assertEquals(given.response(), found.response());
    assertEquals(given.vent(), found.vent());
    assertEquals(given.points(), found.points());
  }

  @Test
  void theSourcesResistanceCountsInTheQThatDecides() {
    BoxDraft draft = driver(0.4, 7);
    double without = draft.vented().alignment().volumeL();
    draft.source = 0.5;
    VentedBoxResult with = draft.vented();
    assertTrue(with.alignment().volumeL() > without);
    assertEquals(driver(with.qts(), 7).vented().alignment().volumeL(), with.volumeL(), 1e-9);
  }

  @Test
  void whereNoneOfTheFiltersCanBeHadNoneIsInvented() {
    List<Fault> faults = driver(1.9, 7).ventedFaults();
    assertEquals("alignment-not-found", faults.get(0).code());
    assertEquals("/box/volume_l", faults.get(0).pointer());
    assertEquals("alignment-not-found", driver(1, 3).ventedFaults().get(0).code());
  }

  @Test
  void withoutAVolumeNeitherTuningNorLengthIsGiven() {
    BoxDraft draft = driver(0.4, 7);
    draft.fb = 40.0;
    draft.portLength = 200.0;
    assertEquals(
        List.of("/box/fb_hz", "/port/length_mm"),
        draft.ventedFaults().stream().map(Fault::pointer).toList());
  }
}
