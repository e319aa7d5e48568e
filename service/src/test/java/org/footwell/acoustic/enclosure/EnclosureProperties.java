package org.footwell.acoustic.enclosure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.acoustic.enclosure.lowend.BoxPoint;
import org.footwell.acoustic.enclosure.lowend.BoxResponse;
import org.footwell.calculation.Arithmetic;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.LeakyBaffle;

class EnclosureProperties {

  private static ClosedBoxDraft closed(double qts, double fs, double vas) {
    return new ClosedBoxDraft(driver(fs, vas)).qts(qts);
  }

  private static VentedBoxDraft vented(double qts, double fs, double vas) {
    return new VentedBoxDraft(driver(fs, vas)).qts(qts);
  }

  private static DriverBuilder driver(double fs, double vas) {
    return BoxDrafts.driver().qms(6.0).fsHz(fs).vasL(vas);
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
    ClosedBoxDraft draft = closed(qts, fs, 40).at(f);
    draft.box.volumeL(volume);
    ClosedBoxResult r = draft.result();
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
    VentedBoxDraft draft = vented(qts, 35, 60).tuned(volume, fb).at(f);
    draft.box.ql(ql);
    VentedBoxResult r = draft.result();
    assertEquals(
        VentedForm.responseDb(f / 35, r.alpha(), r.tuningRatio(), ql, r.qts(), Arithmetic.SILENT),
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
    VentedBoxDraft draft = vented(qts, 35, 60).tuned(40, 38).at(f - step, f, f + step);
    draft.port.diameterMm(60.0);
    draft.driver.leMh(1.5).leExponent(exponent);
    draft.box.qa(qa).qp(30.0);
    draft.played.sourceOhm(0.3);
    List<BoxPoint> points = draft.result().points();
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
    ClosedBoxDraft draft = closed(qts, 35, 60);
    draft.box.volumeL(null).qtc(qts * more).qa(qa).ql(ql).fillFactor(fill);
    ClosedBoxResult wanted = draft.result();
    assertEquals(qts * more, wanted.qtc(), 1e-9);
    draft.box.qtc(null).volumeL(wanted.volumeL());
    assertEquals(qts * more, draft.result().qtc(), 1e-9);
  }

  @Property(tries = 100)
  void aLeakSoTightThatItIsNoneIsFoundBySearchWhereTheClosedFormPutsIt(
      @ForAll @DoubleRange(min = 0.25, max = 1.2) double qts,
      @ForAll @DoubleRange(min = 5, max = 200) double volume) {
    ClosedBoxDraft draft = closed(qts, 35, 60);
    draft.box.volumeL(volume);
    BoxResponse form = draft.result().response();
    draft.box.ql(10000.0);
    BoxResponse search = draft.result().response();
    assertEquals(form.f3Hz(), search.f3Hz(), 1e-3 * form.f3Hz());
    assertEquals(form.f10Hz(), search.f10Hz(), 1e-3 * form.f10Hz());
    assertEquals(form.peakDb(), search.peakDb(), 0.01);
  }

  @Property(tries = 100)
  void levelAndDisplacementFollowTheVoltageAndTheLimitsDoNot(
      @ForAll @DoubleRange(min = 1, max = 100) double factor,
      @ForAll @DoubleRange(min = 12, max = 190) double f) {
    VentedBoxDraft draft = vented(0.4, 35, 60).tuned(40, 38).at(f);
    draft.driver.xmaxMm(8.0).continuousPowerW(200.0);
    BoxPoint one = draft.result().points().get(0);
    draft.played.voltageV(factor);
    BoxPoint more = draft.result().points().get(0);
    assertEquals(one.levelDbSpl() + 20 * Math.log10(factor), more.levelDbSpl(), 1e-9);
    assertEquals(one.displacementMm() * factor, more.displacementMm(), 1e-9 * factor);
    assertEquals(one.maxLevelDbSpl(), more.maxLevelDbSpl(), 1e-9);
    assertEquals(one.groupDelayMs(), more.groupDelayMs(), 1e-12);
  }

  @Property(tries = 50)
  void theTemperatureOfTheAirLeavesTheQsAlone(
      @ForAll @DoubleRange(min = -20, max = 60) double temperature) {
    // Density times speed squared of an ideal gas is its pressure times a constant.
    ClosedBoxDraft draft = closed(0.4, 35, 60).at(40);
    ClosedBoxResult standard = draft.result();
    draft.played.temperatureC(temperature);
    ClosedBoxResult r = draft.result();
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
    ClosedBoxDraft draft = closed(0.6, 60, 12).at(40);
    draft.played.baffle(new LeakyBaffle(40.0, ql, true));
    double leaky = draft.result().points().get(0).levelDbSpl();
    draft.played.baffle(new LeakyBaffle(40.0, ql * 1.5, true));
    assertTrue(draft.result().points().get(0).levelDbSpl() > leaky);
  }
}
