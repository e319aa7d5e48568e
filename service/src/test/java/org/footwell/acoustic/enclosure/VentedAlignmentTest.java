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

  private static VentedBoxDraft driver(double qts, double ql) {
    VentedBoxDraft draft = new VentedBoxDraft().qts(qts);
    draft.box.ql(ql);
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
    VentedBoxResult r = driver(qts, ql).result();
    assertEquals(family, r.alignment().family());
    assertEquals(ripple, r.alignment().rippleDb(), 0.005);
    assertEquals(r.alignment().rippleDb(), r.response().peakDb(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource({"0.383, 100000, 1.414", "0.405, 7, 1.061"})
  void theMaximallyFlatBoxIsTheOneThatIsPrinted(double qts, double ql, double vasOverVb) {
    VentedBoxDraft draft = driver(qts, ql);
    VentedBoxResult r = draft.result();
    assertEquals(vasOverVb, BoxDrafts.VAS_L / r.alignment().volumeL(), 0.005);
    assertEquals(1, r.alignment().fbHz() / BoxDrafts.FS_HZ, 0.002);
    assertEquals(1, r.response().f3Hz() / BoxDrafts.FS_HZ, 0.002);
  }

  /** |G|² = y⁸/(y⁸ + c·y² + 1): c from one frequency must do at every other. */
  @Test
  void aDriverOfLowQFallsOffLikeAQuasiButterworthFilter() {
    VentedBoxDraft draft = driver(0.25, 7);
    draft.port.diameterMm(50.0);
    Alignment found = draft.result().alignment();
    draft.box.volumeL(found.volumeL()).fbHz(found.fbHz());
    double unit = Math.sqrt(BoxDrafts.FS_HZ * found.fbHz());
    double[] ys = {0.5, 0.8, 1.2, 2, 4};
    draft.at(0.5 * unit, 0.8 * unit, 1.2 * unit, 2 * unit, 4 * unit);
    VentedBoxResult r = draft.result();
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
    VentedBoxDraft draft = driver(0.45, 7);
    VentedBoxResult found = draft.result();
    VentedBoxResult given =
        draft.tuned(found.alignment().volumeL(), found.alignment().fbHz()).result();
    assertNull(given.alignment());
    assertEquals(given.volumeL(), found.volumeL());
    assertEquals(given.response(), found.response());
    assertEquals(given.vent(), found.vent());
    assertEquals(given.points(), found.points());
  }

  @Test
  void theSourcesResistanceCountsInTheQThatDecides() {
    VentedBoxDraft draft = driver(0.4, 7);
    double without = draft.result().alignment().volumeL();
    draft.played.sourceOhm(0.5);
    VentedBoxResult with = draft.result();
    assertTrue(with.alignment().volumeL() > without);
    assertEquals(driver(with.qts(), 7).result().alignment().volumeL(), with.volumeL(), 1e-9);
  }

  @Test
  void whereNoneOfTheFiltersCanBeHadNoneIsInvented() {
    List<Fault> faults = driver(1.9, 7).faults();
    assertEquals("alignment-not-found", faults.get(0).code());
    assertEquals("/box/volume_l", faults.get(0).pointer());
    assertEquals("alignment-not-found", driver(1, 3).faults().get(0).code());
  }

  @Test
  void withoutAVolumeNeitherTuningNorLengthIsGiven() {
    VentedBoxDraft draft = driver(0.4, 7);
    draft.box.fbHz(40.0);
    draft.port.lengthMm(200.0);
    assertEquals(
        List.of(
            "at-most-one-of /port/length_mm",
            "needed-beside /box/volume_l",
            "needed-beside /box/volume_l"),
        draft.faults().stream().map(f -> f.code() + " " + f.pointer()).toList());
  }
}
