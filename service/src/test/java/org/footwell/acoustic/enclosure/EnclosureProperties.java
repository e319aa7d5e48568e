package org.footwell.acoustic.enclosure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.acoustic.enclosure.ClosedBoxRequest.LeakyBaffle;
import org.footwell.acoustic.enclosure.lowend.BoxPoint;
import org.footwell.acoustic.enclosure.lowend.BoxResponse;

class EnclosureProperties {

  private static BoxDraft draft(double qts, double fs, double vas) {
    BoxDraft draft = new BoxDraft();
    draft.qms = 6;
    draft.fs = fs;
    draft.vas = vas;
    return draft.qts(qts);
  }

  private static double over(BoxPoint point, BoxResponse response) {
    return point.levelDbSpl() - response.referenceLevelDbSpl();
  }

  @Property(tries = 200)
  void theCircuitOfAClosedBoxIsSmallsHighPass(
      @ForAll @DoubleRange(min = 0.2, max = 1.5) double qts,
      @ForAll @DoubleRange(min = 15, max = 200) double fs,
      @ForAll @DoubleRange(min = 1, max = 300) double volume,
      @ForAll @DoubleRange(min = 2, max = 1000) double f) {
    BoxDraft draft = draft(qts, fs, 40).at(f);
    draft.volume = volume;
    ClosedBoxResult r = draft.closed();
    double x = f / r.fcHz();
    double expected =
        10 * Math.log10(Math.pow(x, 4) / (Math.pow(x * x - 1, 2) + x * x / (r.qtc() * r.qtc())));
    assertEquals(expected, over(r.points().get(0), r.response()), 1e-8);
  }

  @Property(tries = 200)
  void theCircuitOfAVentedBoxIsSmallsHighPassOfOrderFour(
      @ForAll @DoubleRange(min = 0.2, max = 1) double qts,
      @ForAll @DoubleRange(min = 40, max = 100) double volume,
      @ForAll @DoubleRange(min = 30, max = 55) double fb,
      @ForAll @DoubleRange(min = 3, max = 100) double ql,
      @ForAll @DoubleRange(min = 5, max = 500) double f) {
    BoxDraft draft = draft(qts, 35, 60).tuned(volume, fb).at(f);
    draft.ql = ql;
    VentedBoxResult r = draft.vented();
    assertEquals(
        VentedForm.responseDb(f / 35, r.alpha(), r.tuningRatio(), ql, r.qts()),
        over(r.points().get(0), r.response()),
        1e-8);
  }

  @Property(tries = 200)
  void theGroupDelayIsTheSlopeOfThePhase(
      @ForAll @DoubleRange(min = 0.2, max = 1) double qts,
      @ForAll @DoubleRange(min = 0.5, max = 1) double exponent,
      @ForAll @DoubleRange(min = 5, max = 100) double qa,
      @ForAll @DoubleRange(min = 12, max = 400) double f) {
    double step = f * 1e-5;
    BoxDraft draft = draft(qts, 35, 60).tuned(40, 38).at(f - step, f, f + step);
    draft.diameter = 60.0;
    draft.le = 1.5;
    draft.leExponent = exponent;
    draft.qa = qa;
    draft.qp = 30.0;
    draft.source = 0.3;
    List<BoxPoint> points = draft.vented().points();
    double turn = Math.IEEEremainder(points.get(2).phaseDeg() - points.get(0).phaseDeg(), 360);
    double differences = -turn / 360 / (2 * step) * 1000;
    assertEquals(
        differences, points.get(1).groupDelayMs(), 1e-5 * Math.max(1, Math.abs(differences)));
  }

  @Property(tries = 100)
  void aWantedQIsReachedWhateverTheLosses(
      @ForAll @DoubleRange(min = 0.2, max = 0.6) double qts,
      @ForAll @DoubleRange(min = 1.05, max = 1.8) double more,
      @ForAll @DoubleRange(min = 5, max = 100) double qa,
      @ForAll @DoubleRange(min = 5, max = 100) double ql,
      @ForAll @DoubleRange(min = 1, max = 1.4) double fill) {
    BoxDraft draft = draft(qts, 35, 60);
    draft.qtc = qts * more;
    draft.qa = qa;
    draft.ql = ql;
    draft.fill = fill;
    ClosedBoxResult wanted = draft.closed();
    assertEquals(qts * more, wanted.qtc(), 1e-9);
    draft.qtc = null;
    draft.volume = wanted.volumeL();
    assertEquals(qts * more, draft.closed().qtc(), 1e-9);
  }

  @Property(tries = 100)
  void aLeakSoTightThatItIsNoneIsFoundBySearchWhereTheClosedFormPutsIt(
      @ForAll @DoubleRange(min = 0.25, max = 1.2) double qts,
      @ForAll @DoubleRange(min = 5, max = 200) double volume) {
    BoxDraft draft = draft(qts, 35, 60);
    draft.volume = volume;
    BoxResponse form = draft.closed().response();
    draft.ql = 10000.0;
    BoxResponse search = draft.closed().response();
    assertEquals(form.f3Hz(), search.f3Hz(), 1e-3 * form.f3Hz());
    assertEquals(form.f10Hz(), search.f10Hz(), 1e-3 * form.f10Hz());
    assertEquals(form.peakDb(), search.peakDb(), 0.01);
  }

  @Property(tries = 100)
  void levelAndDisplacementFollowTheVoltageAndTheLimitsDoNot(
      @ForAll @DoubleRange(min = 1, max = 100) double factor,
      @ForAll @DoubleRange(min = 12, max = 190) double f) {
    BoxDraft draft = draft(0.4, 35, 60).tuned(40, 38).at(f);
    draft.xmax = 8.0;
    draft.continuousPower = 200.0;
    BoxPoint one = draft.vented().points().get(0);
    draft.voltage = factor;
    BoxPoint more = draft.vented().points().get(0);
    assertEquals(one.levelDbSpl() + 20 * Math.log10(factor), more.levelDbSpl(), 1e-9);
    assertEquals(one.displacementMm() * factor, more.displacementMm(), 1e-9 * factor);
    assertEquals(one.maxLevelDbSpl(), more.maxLevelDbSpl(), 1e-9);
    assertEquals(one.groupDelayMs(), more.groupDelayMs(), 1e-12);
  }

  @Property(tries = 50)
  void theTemperatureOfTheAirLeavesTheQsAlone(
      @ForAll @DoubleRange(min = -20, max = 60) double temperature) {
    // Density times speed squared of an ideal gas is its pressure times a constant.
    BoxDraft draft = draft(0.4, 35, 60).at(40);
    ClosedBoxResult standard = draft.closed();
    draft.temperature = temperature;
    ClosedBoxResult r = draft.closed();
    assertEquals(standard.qtc(), r.qtc(), 1e-12);
    assertEquals(
        over(standard.points().get(0), standard.response()),
        over(r.points().get(0), r.response()),
        1e-9);
  }

  @Property(tries = 50)
  // The pressure's denominator is Z·(jωC + G) + sd², whose size grows with the leak G while Z
  // resists.
  void aLeakierDoorHasLessBassWhenTheLeakIsHeard(
      @ForAll @DoubleRange(min = 0.05, max = 5) double ql) {
    BoxDraft draft = draft(0.6, 60, 12).at(40);
    draft.baffle = new LeakyBaffle(40.0, ql, true);
    double leaky = draft.closed().points().get(0).levelDbSpl();
    draft.baffle = new LeakyBaffle(40.0, ql * 1.5, true);
    assertTrue(draft.closed().points().get(0).levelDbSpl() > leaky);
  }
}
