package org.footwell.fitting.ring;

import static org.footwell.fitting.ring.RingDraft.circle;
import static org.footwell.fitting.ring.RingDraft.oval;
import static org.footwell.fitting.ring.RingDraft.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.fitting.ring.MountingHoles.HolePosition;
import org.footwell.fitting.ring.drawing.Oval;
import org.junit.jupiter.api.Test;

class AdapterRingTest {

  private final RingDraft draft = new RingDraft();

  private String text(String code) {
    return draft.findings(code).stream()
        .map(Finding::inFull)
        .findFirst()
        .orElse("no " + code + " among " + draft.codes());
  }

  private boolean found(String code) {
    return draft.codes().contains(code);
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    AdapterRingResult result = draft.result();
    assertTrue(result.fits());
    assertEquals(12, result.lowestThicknessMm(), 1e-9);
    assertEquals(14, result.highestThicknessMm(), 1e-9);
    assertEquals(12, result.thicknessMm(), 1e-9);
    assertEquals(181.5, result.ring().outer().widthMm(), 1e-9);
    assertEquals(144, result.ring().inner().heightMm(), 1e-9);
    assertEquals(5, result.room().depthMm(), 1e-9);
    assertEquals(5, result.room().grilleMm(), 1e-9);
    assertEquals(25, result.room().magnetMm(), 1e-9);
    assertEquals(3.5, result.room().basketMm(), 1e-9);
    assertEquals(15.75, result.room().overlapMm(), 1e-9);
    assertEquals(7.75, result.room().beyondFrameMm(), 1e-9);
    assertEquals(4.25, result.room().limitMm(), 1e-9);
    assertEquals(18.75, result.walls().rimMm(), 1e-9);
    assertEquals(3, result.walls().factoryToOuterMm(), 1e-9);
    assertEquals(10.25, result.walls().factoryToInnerMm(), 1e-9);
    assertEquals(11.15, result.walls().pilotToOuterMm(), 1e-9);
    assertEquals(4.4, result.walls().pilotToInnerMm(), 1e-9);
    assertEquals(18.029, result.walls().pilotToFactoryMm(), 5e-4);
    assertEquals(94.833, result.faceAreaCm2(), 5e-4);
    assertEquals(113.80, result.volumeCm3(), 5e-3);
    assertEquals(323.42, result.surfaceCm2(), 5e-3);
    assertEquals(121.77, result.massG(), 5e-3);
    assertEquals(3, result.screwEngagement(), 1e-12);
    assertEquals(List.of("heads-under-frame", "screws-meet-panel", "screws-longer"), draft.codes());
  }

  @Test
  void withoutDepthToGainTheRingIsAsThickAsItsScrewsAskFor() {
    draft.opening.depthMm(120.0);
    assertEquals(0, draft.result().lowestThicknessMm());
    assertEquals(8, draft.result().thicknessMm(), 1e-12);
    assertTrue(found("depth-needs-no-ring"));
    draft.ring.screwMm(5.0);
    assertEquals(10, draft.result().thicknessMm(), 1e-12);
  }

  @Test
  void theGrilleKeepsTheRingThinnerThanItsScrewsAskFor() {
    draft.opening.depthMm(120.0).grilleMm(24.0);
    assertEquals(6, draft.result().thicknessMm(), 1e-12);
    assertEquals(
        "In 6 mm the driver's screws hold over 1.5 of their diameters; 2 are common practice"
            + " against pulling out. Use thinner screws, threaded inserts or nuts behind.",
        text("engagement-short"));
    assertTrue(draft.result().fits());
  }

  @Test
  void noRingFitsBetweenWindowAndGrille() {
    draft.opening.grilleMm(28.0);
    AdapterRingResult result = draft.result();
    assertFalse(result.fits());
    assertEquals(12, result.thicknessMm(), 1e-12);
    assertEquals(
        "No ring fits: the depth behind needs 12 mm, the grille allows 10 mm; 2 mm"
            + " are missing. Take a shallower driver. Do not cut the vehicle for it.",
        text("no-thickness-fits"));
    assertFalse(found("hits-grille"));
  }

  @Test
  void aRingThatIsGivenIsTooThinOrTooThick() {
    draft.ring.thicknessMm(10.0);
    assertEquals(
        "At 10 mm the ring is too thin: with 3 mm left the driver comes too close to"
            + " what lies behind, such as the window. Make it 12 mm thick or more.",
        text("hits-behind"));
    draft.ring.thicknessMm(18.0);
    assertEquals(
        "At 18 mm the ring is too thick: with −1 mm left the driver comes too close to"
            + " the grille. Make it 14 mm thick at most.",
        text("hits-grille"));
    draft.ring.thicknessMm(13.0);
    assertTrue(draft.result().fits());
  }

  @Test
  void withoutAGrilleNothingIsSaidAboutItsLimit() {
    draft.opening.grilleMm(null);
    assertNull(draft.result().highestThicknessMm());
    assertNull(draft.result().room().grilleMm());
    assertTrue(found("grille-not-given"));
  }

  @Test
  void anExcursionThatIsNotGivenIsAskedFor() {
    draft.driver.excursionMm(null);
    assertEquals(20, draft.result().highestThicknessMm(), 1e-12);
    assertTrue(found("excursion-not-given"));
  }

  @Test
  void magnetAndBasketMustPassThePanel() {
    draft.opening.cutOut(round(120)).holes(circle(3, 170, 90));
    assertTrue(found("basket-unknown"));
    assertEquals(-11.5, draft.result().room().basketMm(), 1e-12);
    draft.driver.basketDiameterMm(118.0);
    assertFalse(found("basket-unknown"));
    assertEquals(1, draft.result().room().basketMm(), 1e-12);
    draft.driver.basketDiameterMm(126.0);
    assertEquals(
        "The basket of 126 mm does not pass the panel's cut-out, which is 120 mm at its narrowest."
            + " A thicker ring helps if the basket tapers; measure it again at that depth.",
        text("basket-too-wide"));
    draft.opening.cutOut(oval(90, 130));
    assertEquals(
        "The magnet of 100 mm does not pass the panel's cut-out, which is 90 mm at its narrowest."
            + " Cutting the panel could not be undone; take another driver.",
        text("magnet-too-wide"));
  }

  @Test
  void aRingThatIsGivenMustCoverTheCutOutAndStayWithinTheLimit() {
    draft.ring.outer(round(149));
    assertTrue(found("cut-out-not-covered"));
    assertTrue(found("frame-overhangs"));
    draft.ring.outer(round(154));
    assertTrue(found("overlap-small"));
    draft.ring.outer(round(194));
    assertEquals(
        "The ring reaches 2 mm beyond what the panel has room for. Make it smaller.",
        text("outer-beyond-limit"));
  }

  @Test
  void screwsThatMeetFactoryHolesTurnTheDriver() {
    draft.opening.holes(circle(4, 160, 45));
    AdapterRingResult turned = draft.result();
    assertEquals(45, Math.abs(turned.turnedDeg()), 1e-12);
    assertTrue(turned.fits());
    assertTrue(found("driver-turned"));
    draft.driver.turnedDeg(0.0);
    assertFalse(draft.result().fits());
    // Centres 2 mm apart, radii 1.6 and 2.75 mm.
    assertEquals(-2.35, draft.result().walls().pilotToFactoryMm(), 1e-9);
    assertEquals(
        "A pilot hole for the driver's screws runs 2.35 mm into a factory hole. Turn the driver.",
        text("holes-overlap"));
  }

  @Test
  void anOvalDriverIsNotTurned() {
    draft.ovalOpening();
    draft.driver.frame(oval(164, 236)).cutOut(oval(146, 218)).holes(RingDraft.corners(110, 160));
    draft.opening.holes(RingDraft.corners(112, 162));
    assertEquals(0, draft.result().turnedDeg());
    assertTrue(found("holes-overlap"));
    draft.driver.turnedDeg(180.0);
    assertTrue(found("holes-overlap"));
    draft.driver.turnedDeg(90.0);
    assertEquals(List.of("/driver/turned_deg"), draft.refused());
  }

  @Test
  void anOvalRingGrowsAlikeOnAllSidesUntilEveryHoleHasItsWall() {
    draft.ovalOpening();
    AdapterRingResult result = draft.result();
    assertEquals(3, result.walls().factoryToOuterMm(), 1e-9);
    Oval outer = result.ring().outer();
    // 166 across by the frame, 226 up by the cut-out and its overlap, and as much more on both.
    assertEquals(166 - 226, outer.widthMm() - outer.heightMm(), 1e-9);
    assertTrue(found("larger-than-sheet"));
  }

  @Test
  void aHoleThatBreaksAnEdgeAndAThinWallAreNamed() {
    draft.ring.outer(round(173));
    assertEquals(
        "Between a factory hole and the outer edge no wall is left: they overlap by"
            + " 1.25 mm. Make the ring larger or move the holes.",
        text("hole-breaks-edge"));
    draft.ring.outer(round(178));
    assertEquals(
        "Between a factory hole and the outer edge the wall is 1.25 mm where 3 mm are"
            + " wanted. Make the ring larger or move the holes.",
        text("wall-thin"));
  }

  @Test
  void aWallThatCannotBeMadeStopsTheRing() {
    draft.ring.wallMinimumMm(0.5).outer(round(175.6));
    assertEquals(
        "Between a factory hole and the outer edge the wall is 0.05 mm; below 0.9 mm none can be"
            + " made of ASA. Make the ring larger or move the holes.",
        text("wall-too-thin"));
    assertFalse(draft.result().fits());
    draft.ring.outer(round(177.3));
    assertTrue(draft.result().fits(), "two beads of a printer");
    draft.ring.material(RingMaterial.MDF);
    assertTrue(found("wall-too-thin"));
    draft.ring.outer(round(179.5));
    assertFalse(found("wall-too-thin"), "2 mm of board");
  }

  @Test
  void aPilotWantsABossOfTwoScrewDiameters() {
    draft.ring.screwMm(6.0);
    draft.driver.holes(circle(4, 156, 45));
    // From the pilot of 4.8 mm to the inner edge 78 − 72 − 2.4 = 3.6 mm, all a boss of 12 mm asks.
    assertFalse(found("pilot-wall-thin"));
    draft.ring.basketClearanceMm(0.9);
    assertEquals(
        "The wall around a pilot hole is 3.2 mm; a boss of two screw diameters would"
            + " leave 3.6 mm. It may split. Make the ring larger, or take thinner screws.",
        text("pilot-wall-thin"));
  }

  @Test
  void aThinRingBends() {
    draft.opening.depthMm(120.0);
    draft.ring.thicknessMm(2.0);
    assertTrue(found("ring-thin"));
  }

  @Test
  void theFactoryScrewsAreTooShortByTheRing() {
    assertTrue(text("screws-longer").contains("Take screws 12 mm longer than the factory's"));
  }

  @Test
  void aThickRingIsALever() {
    draft.opening.grilleMm(null).depthMm(49.0);
    assertEquals(25, draft.result().thicknessMm(), 1e-12);
    assertFalse(found("ring-thick"));
    draft.opening.depthMm(30.0);
    assertEquals(44, draft.result().thicknessMm(), 1e-12);
    assertTrue(text("ring-thick").startsWith("A ring of 44 mm, thicker than 25 mm, is a lever"));
    assertTrue(draft.result().fits());
  }

  @Test
  void earsAndCornersOutsideTheFrameAreRefusedWithTheReasonAndAWayOut() {
    // Corners of 120 mm square: 84.853 mm from the centre, the frame ends at 83.
    draft.driver.holes(RingDraft.corners(120, 120));
    Fault fault = draft.refusals().get(0);
    assertEquals("hole-outside-frame", fault.code());
    assertEquals("/driver/holes/positions/0", fault.pointer());
    assertEquals(
        "driver.holes.positions.0 puts a hole at 60, 60 mm, 1.853 mm outside the frame of 166 mm. A"
            + " frame is a circle or an ellipse here; for one with ears or corners give the one"
            + " around them, more than 169.7056 mm, so that the ring carries them.",
        fault.detail());
    draft.driver.frame(round(170));
    assertTrue(draft.result().ring().frame().circular());
  }

  @Test
  void aHoleWithinTheDriversOwnCutOutIsAnotherReason() {
    draft.driver.holes(circle(4, 140, 45));
    Fault fault = draft.refusals().get(0);
    assertEquals("hole-in-driver-cut-out", fault.code());
    assertTrue(fault.detail().contains("1.5 mm inside the driver's cut-out of 143 mm"));
  }

  @Test
  void inADoorPlaSoftensAndAsaHolds() {
    assertFalse(found("softens"));
    draft.ring.material(RingMaterial.PLA);
    assertEquals(
        "A door in the summer sun is taken to reach 85 degrees Celsius, but PLA softens"
            + " at 59: screws pull out and the ring sags. Take ABS, ASA or another material"
            + " that stays hard.",
        text("softens"));
    draft.ring.placeTemperatureC(50.0);
    assertFalse(found("softens"));
    assertTrue(found("heat-margin-small"));
    draft.ring.placeTemperatureC(40.0);
    assertFalse(found("heat-margin-small"));
  }

  @Test
  void boardSwellsAndIsDrilledSmaller() {
    draft.ring.material(RingMaterial.MDF);
    AdapterRingResult result = draft.result();
    assertTrue(found("moisture"));
    assertFalse(found("softens"));
    assertEquals(2.8, result.ring().pilotHoles().get(0).diameterMm(), 1e-12);
    assertEquals(result.volumeCm3() * 0.75, result.massG(), 1e-9);
  }

  @Test
  void aSparsePrintWeighsLessAndHoldsLess() {
    double solid = draft.result().massG();
    draft.ring.fill(0.4);
    assertEquals(0.4 * solid, draft.result().massG(), 1e-9);
    assertTrue(found("sparse-print"));
  }

  @Test
  void unclearOutlinesAndHolesAreRefusedAtOnceWithWhatIsOutOfBounds() {
    draft.opening.cutOut(new Outline(null, 150.0, null));
    draft.driver.frame(new Outline(166.0, null, 166.0)).holes(new MountingHoles(null, null));
    draft.ring.screwMm(11.0);
    assertEquals(
        List.of(
            "/driver/frame/height_mm",
            "/driver/frame/width_mm",
            "/driver/holes",
            "/opening/cut_out/height_mm",
            "/ring/screw_mm"),
        draft.refused().stream().sorted().toList());
  }

  @Test
  void anotherMaterialNeedsItsFiguresBesideMeasuresThatArePossible() {
    draft.ring.material(RingMaterial.OTHER).pilotMm(5.0);
    assertEquals(
        List.of("/ring/density_kg_per_m3", "/ring/softening_c", "/ring/pilot_mm"), draft.refused());
  }

  @Test
  void impossibleMeasuresAreRefusedWithTheirField() {
    draft.opening.limit(round(140)).holes(circle(3, 149, 90));
    draft.driver.cutOut(round(166)).magnetDiameterMm(170.0).basketDiameterMm(167.0);
    draft.ring.outer(round(167)).pilotMm(4.0);
    assertEquals(
        List.of(
            "/opening/cut_out",
            "/opening/holes/bolt_circle/diameter_mm",
            "/driver/cut_out",
            "/driver/magnet_diameter_mm",
            "/driver/basket_diameter_mm",
            "/driver/holes/bolt_circle/diameter_mm",
            "/ring/pilot_mm",
            "/ring/outer"),
        draft.refused());
  }

  @Test
  void holesInOnePlaceAreRefused() {
    draft.opening.holes(
        new MountingHoles(null, List.of(new HolePosition(85.0, 0.0), new HolePosition(85.0, 5.0))));
    assertEquals(List.of("/opening/holes/positions/1"), draft.refused());
    assertEquals(
        "opening.holes.positions.1 puts a hole at 85, 5 mm, less than 5.5 mm from another: it must"
            + " be more than a hole's diameter away from the others.",
        draft.refusals().get(0).detail());
  }
}
