package org.footwell.fitting.carpentry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Verdict;
import org.footwell.fitting.carpentry.BoxPanelsRequest.Measured;
import org.footwell.fitting.carpentry.BoxPanelsResult.Name;
import org.footwell.fitting.carpentry.BoxPanelsResult.Panel;
import org.junit.jupiter.api.Test;

class BoxPanelsTest {

  private static void assertPanel(
      BoxPanelsResult result, Name name, int count, double length, double width) {
    Panel panel = PanelsDraft.panel(result, name);
    assertEquals(count, panel.count());
    assertEquals(length, panel.lengthMm(), 1e-6);
    assertEquals(width, panel.widthMm(), 1e-6);
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    BoxPanelsResult r = new PanelsDraft().result();
    assertEquals(250, r.inside().depthMm(), 1e-6);
    assertEquals(250, r.inside().topDepthMm(), 1e-6);
    assertEquals(536, r.outside().widthMm(), 1e-6);
    assertEquals(336, r.outside().heightMm(), 1e-6);
    assertEquals(286, r.outside().depthMm(), 1e-6);
    assertEquals(37.5, r.grossVolumeL(), 1e-9);
    assertEquals(51.507456, r.outsideVolumeL(), 1e-6);
    assertEquals(0, r.leanDeg());
    assertPanel(r, Name.SIDE, 2, 336, 286);
    assertPanel(r, Name.TOP, 1, 500, 286);
    assertPanel(r, Name.BOTTOM, 1, 500, 286);
    assertPanel(r, Name.FRONT, 1, 500, 300);
    assertPanel(r, Name.BACK, 1, 500, 300);
    assertNull(PanelsDraft.panel(r, Name.BACK).mitreDeg());
    assertNull(PanelsDraft.panel(r, Name.SIDE).topWidthMm());
    // 2·336·286 + 2·500·286 + 2·500·300 mm²
    assertEquals(0.778192, r.boardAreaM2(), 1e-9);
    // 750 kg/m³ · (51.507456 − 37.5) l
    assertEquals(10.505592, r.massKg(), 1e-6);
  }

  @Test
  void aWedgeLeansAsItsDepthsSay() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.volumeL(30.0).topDepthMm(50.0);
    BoxPanelsResult r = draft.result();
    // (d + 50)/2·300·500 = 30 l: d = 350; lean 1, 45 degrees
    assertEquals(350, r.inside().depthMm(), 1e-6);
    assertEquals(45, r.leanDeg(), 1e-6);
    // 350 + 18 + 18·√2 + 18 and 50 + 18 + 18·√2 − 18
    assertEquals(411.4558, r.outside().depthMm(), 1e-4);
    assertEquals(75.4558, r.outside().topDepthMm(), 1e-4);
    assertPanel(r, Name.TOP, 1, 500, r.outside().topDepthMm() + 18);
    assertPanel(r, Name.BACK, 1, 500, 300 * Math.sqrt(2) + 18);
    assertEquals(45, PanelsDraft.panel(r, Name.BACK).mitreDeg(), 1e-6);
    assertEquals(r.outside().topDepthMm(), PanelsDraft.panel(r, Name.SIDE).topWidthMm(), 1e-12);
  }

  @Test
  void theSameWedgeByItsAngleAndByItsOutside() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.volumeL(30.0).backAngleDeg(45.0);
    assertEquals(50, draft.result().inside().topDepthMm(), 1e-6);
    draft
        .box
        .measured(Measured.OUTSIDE)
        .widthMm(536.0)
        .heightMm(null)
        .depthMm(393 + 18 * Math.sqrt(2) - 7);
    assertEquals(336, draft.result().outside().heightMm(), 1e-6);
    draft.box.backAngleDeg(null).topDepthMm(50 + 18 * Math.sqrt(2));
    assertEquals(336, draft.result().outside().heightMm(), 1e-6);
  }

  @Test
  void whatIsInTheBoxIsAddedToItsVolume() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.volumeL(30.0).driverDisplacementL(3.0).bracingL(1.5).portDisplacementL(3.0);
    assertEquals(250, draft.result().inside().depthMm(), 1e-6);
  }

  @Test
  void proportionsScaleTheWholeBox() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.widthMm(null).heightMm(null).heightPerWidth(0.6).depthPerWidth(0.5);
    BoxPanelsResult r = draft.result();
    assertEquals(500, r.inside().widthMm(), 1e-6);
    assertEquals(300, r.inside().heightMm(), 1e-6);
  }

  @Test
  void aThickFrontTakesDepthOnlyAndALightHoleMass() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.frontBoardMm(36.0).driverCutoutMm(200.0);
    BoxPanelsResult r = draft.result();
    assertEquals(304, r.outside().depthMm(), 1e-6);
    assertEquals(36, PanelsDraft.panel(r, Name.FRONT).thicknessMm());
    double boards = r.panels().stream().mapToDouble(p -> p.count() * p.massKg()).sum();
    // 750·π·0.1²·0.036
    assertEquals(0.848230, boards - r.massKg(), 1e-6);
  }

  @Test
  void whatDoesNotFitWellIsSaid() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.boardMm(14.0).boardDensityKgPerM3(1200.0).driverCutoutMm(280.0).driverDepthMm(270.0);
    List<String> codes = draft.codes();
    assertEquals(
        List.of("cutout-near-edge", "driver-too-deep", "panel-wants-brace", "box-must-be-held"),
        codes.stream().sorted((a, b) -> order(a) - order(b)).toList());
    draft.box.bracingL(0.5);
    assertTrue(!draft.codes().contains("panel-wants-brace"));
  }

  private static int order(String code) {
    return List.of("cutout-near-edge", "driver-too-deep", "panel-wants-brace", "box-must-be-held")
        .indexOf(code);
  }

  @Test
  void aBoxTooNarrowForAnyDriverIsAStop() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.volumeL(1.0).measured(Measured.OUTSIDE).widthMm(40.0).heightMm(400.0);
    // 40 mm less twice 18 mm of board.
    Finding narrow = draft.answer().findings().get(0);
    assertEquals("inside-too-narrow", narrow.code());
    assertEquals("/width_mm", narrow.pointer());
    assertEquals(4, narrow.value(), 1e-9);
    assertEquals(Verdict.STOP, draft.answer().verdict());
    // The driver's own size counts where it is given.
    draft.box.widthMm(70.0).driverCutoutMm(30.0);
    assertTrue(!draft.codes().contains("inside-too-narrow"));
    draft.box.driverCutoutMm(34.0);
    assertEquals("cutout-too-large", draft.fault().code());
  }

  @Test
  void aBoxTooShallowForItsDriverIsAStopAsWell() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.volumeL(6.0);
    // 6 litre over 500 by 300 mm are 40 mm.
    assertEquals("/depth_mm", draft.answer().findings().get(0).pointer());
    draft.box.driverDepthMm(45.0);
    assertTrue(!draft.codes().contains("inside-too-narrow"));
    draft.box.driverDepthMm(60.0);
    assertEquals("driver-too-deep", draft.codes().get(0));
    assertEquals(Verdict.STOP, draft.answer().verdict());
  }

  @Test
  void aHoleThatDoesNotFitTheFrontIsRefused() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.driverCutoutMm(300.0);
    assertEquals("cutout-too-large", draft.fault().code());
    assertEquals("/driver_cutout_mm", draft.fault().pointer());
  }

  /** A millilitre between two faces of 9 m²: 10⁶ mm³ over 9·10⁶ mm². */
  @Test
  void theSmallestVolumeBetweenTheLongestDimensionsIsFound() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.volumeL(0.001).driverDisplacementL(0.0).bracingL(0.0).portDisplacementL(0.0);
    draft.box.measured(Measured.INSIDE).widthMm(3000.0).heightMm(3000.0).depthMm(null);
    assertEquals(1000 / 9e6, draft.result().inside().depthMm(), 1e-10);
    draft.box.volumeL(10_000.0);
    assertEquals(1e10 / 9e6, draft.result().inside().depthMm(), 1e-6);
  }

  @Test
  void tooFewAndTooManyDimensionsAreRefused() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.depthMm(200.0);
    assertEquals("dimensions-undecided", draft.fault().code());
    draft.box.depthMm(null).heightMm(null);
    assertEquals("dimensions-undecided", draft.fault().code());
    draft.box.widthMm(null).heightPerWidth(1.0);
    assertEquals("needed-beside", draft.fault().code());
    draft.box.depthPerWidth(1.0).widthMm(400.0);
    assertEquals("dimensions-undecided", draft.fault().code());
  }

  @Test
  void impossibleBoxesAreRefusedAtTheOpenDimension() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.measured(Measured.OUTSIDE).heightMm(36.0);
    // 18 mm of board above and below leave nothing.
    assertEquals("dimension-out-of-reach", draft.fault().code());
    assertEquals("/depth_mm", draft.fault().pointer());
    draft.box.heightMm(null).depthMm(100.0).backAngleDeg(45.0);
    // The back reaches the front before the box is large enough.
    assertEquals("/height_mm", draft.fault().pointer());
    draft.box.topDepthMm(50.0);
    assertEquals("at-most-one-of", draft.fault().code());
  }

  /** A back that leans so far keeps more than the volume asked for in front of it. */
  @Test
  void aLeanThatLeavesMoreThanAskedForIsRefused() {
    PanelsDraft draft = new PanelsDraft();
    draft
        .box
        .measured(Measured.OUTSIDE)
        .volumeL(1.0)
        .widthMm(600.0)
        .heightMm(500.0)
        .backAngleDeg(60.0);
    assertEquals("dimension-out-of-reach", draft.fault().code());
    assertEquals("/depth_mm", draft.fault().pointer());
  }

  @Test
  void aTopAsDeepAsTheBottomIsNoWedge() {
    PanelsDraft draft = new PanelsDraft();
    draft.box.topDepthMm(260.0);
    assertEquals("wedge-not-a-wedge", draft.fault().code());
    assertEquals("/top_depth_mm", draft.fault().pointer());
  }

  @Test
  void theRequestFitsIntoACellOfASpreadsheet() {
    assertTrue(Shape.of(BoxPanelsRequest.class).flat());
  }
}
