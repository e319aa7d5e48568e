package org.footwell.fitting.ring;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.calculation.Verdict;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.ring.AdapterRingRequest.FittedDriver;
import org.footwell.fitting.ring.AdapterRingRequest.Opening;
import org.footwell.fitting.ring.AdapterRingRequest.RingMaking;
import org.footwell.fitting.ring.AdapterRingResult.Room;
import org.footwell.fitting.ring.drawing.DrawnRing;
import org.footwell.fitting.ring.drawing.DxfDrawing;
import org.footwell.fitting.ring.drawing.Oval;
import org.footwell.fitting.ring.drawing.RingGeometry;
import org.footwell.fitting.ring.drawing.StlFile;
import org.footwell.fitting.ring.drawing.SvgDrawing;
import org.footwell.fitting.ring.drawing.Walls;
import org.footwell.parts.Safety;

/** Whether a driver fits an opening, and the ring between them. */
public final class AdapterRing implements Calculation<AdapterRingRequest, AdapterRingResult> {

  private static final Source PRISM = Source.of("Volume and surface of a straight prism");

  static final Formula.Of2 VOLUME =
      Formula.of("volume_cm3", "A·t/1000", "cm³", PRISM)
          .with("A", "t", (area, thickness) -> area * thickness / 1000);
  static final Formula.Of3 SURFACE =
      Formula.of("surface_cm2", "(2·A + U·t)/100", "cm²", PRISM)
          .with("A", "U", "t", (area, edges, thickness) -> (2 * area + edges * thickness) / 100);
  static final Formula.Of3 MASS =
      Formula.of("mass_g", "ρ·V·fill/1000", "g", DEFINITION)
          .with("ρ", "V", "fill", (density, volume, fill) -> density * volume * fill / 1000);

  private static final Card<AdapterRingRequest, AdapterRingResult> CARD =
      Card.of("adapter-ring", AdapterRingRequest.class, AdapterRingResult.class)
          .title("Adapter ring for a driver")
          .purpose(
              "Does a driver fit an opening of the vehicle, how thick must the spacer ring be, what"
                  + " is left in each direction; and the ring itself as a solid and drawings. It"
                  + " is held by the factory holes, so that the vehicle can go back to stock.")
          .example(
              """
              {"opening": {
                 "cut_out": {"diameter_mm": 150},
                 "holes": {"bolt_circle":
                   {"hole_count": 3, "diameter_mm": 170, "first_angle_deg": 90}},
                 "depth_mm": 62, "grille_mm": 32, "limit": {"diameter_mm": 190}},
               "driver": {
                 "frame": {"diameter_mm": 166},
                 "cut_out": {"diameter_mm": 143},
                 "holes": {"bolt_circle":
                   {"hole_count": 4, "diameter_mm": 156, "first_angle_deg": 45}},
                 "mounting_depth_mm": 69, "magnet_diameter_mm": 100, "front_height_mm": 9,
                 "excursion_mm": 6},
               "ring": {"material": "asa"}}
              """)
          .sources(
              Oval.ELLIPSE,
              Oval.RAMANUJAN,
              PRISM,
              RingThickness.SCREWS,
              StlFile.FORMAT,
              DxfDrawing.FORMAT,
              Source.COMMON_PRACTICE)
          .limits(
              "The ring is flat, of one thickness, with straight holes and an outer edge that is a"
                  + " circle or an ellipse; recesses, countersinks, lugs and gaskets are not in it.",
              "Opening and driver share their centre; axes of ovals lie across and up.",
              "The driver is taken as a frame, a basket and a magnet around its axis. Terminals,"
                  + " cables and a window that does not run straight are not: try with the window"
                  + " wound down and up.",
              "Screw rules are for screws that form their thread in solid plastic or board, not a"
                  + " calculated pull-out force.",
              "Measures are those of drawing and solid; what printer, shrinkage and saw add is not"
                  + " in them.")
          .findings(RingFinding.values())
          .refusals(RingFault.values())
          .cautions(Safety.AIRBAG, Safety.RESTRAINT)
          .view(
              "stl",
              "model/stl",
              "the ring as a closed solid for 3D printing, binary STL, mm; refused when it does not"
                  + " fit",
              shown -> StlFile.of(fitting(shown.answer())))
          .view(
              "svg",
              "image/svg+xml",
              "the ring drawn 1:1 for printing; struck through when it does not fit",
              shown -> SvgDrawing.of(drawn(shown.answer())))
          .view(
              "dxf",
              "image/vnd.dxf",
              "the ring drawn 1:1 in mm for cutting, DXF; struck through when it does not fit",
              shown -> DxfDrawing.of(drawn(shown.answer())))
          .build();

  @Override
  public Card<AdapterRingRequest, AdapterRingResult> card() {
    return CARD;
  }

  @Override
  public AdapterRingResult compute(AdapterRingRequest q, Run run) {
    RingThickness thickness = thickness(q, run);
    RingLayout layout = RingLayout.of(q, inner(q));
    RingGeometry ring = layout.geometry();
    Walls walls = layout.walls();
    Room room = room(q, thickness, ring);
    double engagement = run.apply(RingRules.ENGAGEMENT, thickness.taken(), q.ring().screwMm());

    RingRules rules = new RingRules(q, run);
    rules.depth(thickness, room);
    rules.openings(room);
    rules.walls(walls);
    rules.screws(thickness, engagement);
    rules.holes(ring, layout.turnedDeg());
    rules.thick(thickness);
    rules.weather();

    RingFace face = RingFace.of(ring, walls, run);
    double volume = run.apply(VOLUME, face.areaMm2(), thickness.taken());
    return AdapterRingResultBuilder.builder()
        .fits(run.verdictOn("") != Verdict.STOP)
        .lowestThicknessMm(thickness.lowest())
        .highestThicknessMm(thickness.highest())
        .thicknessMm(thickness.taken())
        .turnedDeg(layout.turnedDeg())
        .room(room)
        .walls(walls)
        .ring(ring)
        .faceAreaCm2(face.areaMm2() / 100)
        .volumeCm3(volume)
        .surfaceCm2(run.apply(SURFACE, face.areaMm2(), face.edgesMm(), thickness.taken()))
        .massG(run.apply(MASS, q.ring().densityKgPerM3(), volume, q.ring().fill()))
        .screwEngagement(engagement)
        .build();
  }

  /** The ring of an answer with what forbids it. */
  static DrawnRing drawn(Answer<AdapterRingResult> answer) {
    AdapterRingResult result = answer.result();
    return new DrawnRing(
        result.ring(),
        result.walls(),
        result.thicknessMm(),
        answer.findings().stream().filter(finding -> finding.level() == Verdict.STOP).toList());
  }

  /** A solid cannot be struck through, and a printer shows no text of its file: so there is none. */
  private static DrawnRing fitting(Answer<AdapterRingResult> answer) {
    DrawnRing ring = drawn(answer);
    Faults faults = new Faults();
    for (Finding finding : ring.against()) {
      faults
          .add(RingFault.RING_DOES_NOT_FIT)
          .at(finding.pointer())
          .own("why", finding.inFull())
          .allowed(Phrase.of(RingWords.RING_THAT_FITS));
    }
    if (!faults.none()) {
      throw new Refused(faults);
    }
    return ring;
  }

  /** The driver's cut-out with air around it. */
  static Oval inner(AdapterRingRequest q) {
    return q.driver().cutOut().oval().wider(q.ring().basketClearanceMm());
  }

  private static RingThickness thickness(AdapterRingRequest q, Run run) {
    Opening opening = q.opening();
    FittedDriver driver = q.driver();
    RingMaking ring = q.ring();
    double lowest =
        run.apply(
            RingThickness.LOWEST,
            driver.mountingDepthMm(),
            opening.depthClearanceMm(),
            opening.depthMm());
    Double highest =
        opening.grilleMm() == null
            ? null
            : (Double)
                run.apply(
                    RingThickness.HIGHEST,
                    opening.grilleMm(),
                    driver.frontHeightMm(),
                    driver.excursionMm() == null ? 0 : driver.excursionMm(),
                    opening.grilleClearanceMm());
    if (ring.thicknessMm() != null) {
      return new RingThickness(lowest, highest, ring.thicknessMm());
    }
    double forScrews = run.apply(RingThickness.FOR_SCREWS, ring.screwMm());
    double wished = Math.max(Math.max(lowest, ring.wallMinimumMm()), forScrews);
    return RingThickness.near(wished, lowest, highest);
  }

  private static Room room(AdapterRingRequest q, RingThickness thickness, RingGeometry ring) {
    Opening opening = q.opening();
    FittedDriver driver = q.driver();
    Oval cutOut = ring.panelCutOut();
    Oval basket =
        driver.basketDiameterMm() == null
            ? driver.cutOut().oval()
            : Oval.round(driver.basketDiameterMm());
    return new Room(
        opening.depthMm() + thickness.taken() - driver.mountingDepthMm(),
        thickness.highest() == null
            ? null
            : (Double) (thickness.highest() - thickness.taken() + opening.grilleClearanceMm()),
        cutOut.beyond(Oval.round(driver.magnetDiameterMm())),
        cutOut.beyond(basket),
        ring.outer().beyond(cutOut),
        ring.outer().beyond(ring.frame()),
        opening.limit() == null ? null : (Double) opening.limit().oval().beyond(ring.outer()));
  }
}
