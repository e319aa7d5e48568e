package org.footwell.acoustic.driver;

import static org.footwell.acoustic.driver.Sheets.rated;
import static org.footwell.acoustic.driver.Sheets.result;
import static org.footwell.acoustic.driver.Sheets.woofer;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.footwell.acoustic.driver.DriverCheckResult.Completed;
import org.footwell.acoustic.driver.sheet.Figure;

class DriverCheckProperties {

  private static DriverCheckRequestBuilder motor(
      double mms, double cms, double rms, double bl, double re) {
    return rated()
        .tolerance(Sheets.EXACT)
        .sdCm2(330.0)
        .mmsG(mms)
        .cmsMmPerN(cms)
        .rmsKgPerS(rms)
        .blTm(bl)
        .reOhm(re);
  }

  /** Six figures, all others from them, then back from the others. */
  @Property(tries = 300)
  void thereAndBackAgain(
      @ForAll @DoubleRange(min = 5, max = 300) double mms,
      @ForAll @DoubleRange(min = 0.05, max = 2) double cms,
      @ForAll @DoubleRange(min = 0.5, max = 10) double rms,
      @ForAll @DoubleRange(min = 3, max = 25) double bl,
      @ForAll @DoubleRange(min = 2, max = 8) double re) {
    Completed all = result(motor(mms, cms, rms, bl, re)).completed();
    Completed back =
        result(
                rated()
                    .tolerance(Sheets.EXACT)
                    .fsHz(all.fsHz())
                    .vasL(all.vasL())
                    .qms(all.qms())
                    .qts(all.qts())
                    .sdCm2(330.0)
                    .reOhm(re))
            .completed();
    assertEquals(mms, back.mmsG(), mms * 1e-9);
    assertEquals(bl, back.blTm(), bl * 1e-9);
    assertEquals(rms, back.rmsKgPerS(), rms * 1e-9);
    assertEquals(all.qes(), back.qes(), all.qes() * 1e-9);
  }

  /** A consistent record is not touched by the reconciliation. */
  @Property(tries = 300)
  void aConsistentRecordStaysAsItIs(
      @ForAll @DoubleRange(min = 5, max = 300) double mms,
      @ForAll @DoubleRange(min = 0.05, max = 2) double cms,
      @ForAll @DoubleRange(min = 0.5, max = 10) double rms) {
    DriverCheckRequestBuilder draft = motor(mms, cms, rms, 9.5, 3.4);
    Completed all = result(draft).completed();
    DriverCheckResult result =
        result(
            draft.fsHz(all.fsHz()).vasL(all.vasL()).qms(all.qms()).qes(all.qes()).qts(all.qts()));
    assertEquals(5, result.redundancyCount());
    assertEquals(0, result.farthestDeviations(), 1e-6);
    assertEquals(mms, result.adjusted().mmsG(), mms * 1e-8);
  }

  /** Whatever is wrong by a third in a full record is named or suspected, and never cleared. */
  @Property(tries = 300)
  void theSpoiltFigureIsSuspected(
      @ForAll @IntRange(min = 0, max = 10) int which,
      @ForAll @DoubleRange(min = 1.5, max = 2) double factor) {
    String name = List.copyOf(Sheets.FIGURES.keySet()).get(which);
    double[] values = {3.4, 38, 7.09, 0.56, 0.52, 43.2, 330, 9.5, 62, 0.28, 2.1};
    DriverCheckRequestBuilder draft = woofer();
    Sheets.FIGURES.get(name).accept(draft, values[which] * factor);
    List<Figure> suspects = result(draft).suspects();
    // A resistance above the rated impedance has its own finding and is named all the same.
    assertTrue(suspects.stream().anyMatch(figure -> figure.field.equals(name)));
  }
}
