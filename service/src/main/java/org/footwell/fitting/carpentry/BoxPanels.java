package org.footwell.fitting.carpentry;

import static org.footwell.fitting.carpentry.CarpentryFinding.BOX_MUST_BE_HELD;
import static org.footwell.fitting.carpentry.CarpentryFinding.CUTOUT_NEAR_EDGE;
import static org.footwell.fitting.carpentry.CarpentryFinding.DRIVER_TOO_DEEP;
import static org.footwell.fitting.carpentry.CarpentryFinding.INSIDE_TOO_NARROW;
import static org.footwell.fitting.carpentry.CarpentryFinding.PANEL_WANTS_BRACE;

import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.fitting.carpentry.BoxPanelsResult.Panel;
import org.footwell.fitting.carpentry.BoxPanelsResult.Size;
import org.footwell.parts.Safety;

/** From a volume to the panels of a box. */
public final class BoxPanels implements Calculation<BoxPanelsRequest, BoxPanelsResult> {

  /** A box above this mass is said to need holding; common practice, no source. */
  private static final double HEAVY_KG = 10;

  /** A panel spans this many times its thickness without a brace; common practice, no source. */
  private static final double SPAN_IN_THICKNESSES = 20;

  /** What should be left around a cutout, mm; common practice, no source. */
  private static final double LEAST_RIM_MM = 25;

  /** Narrower inside no driver, port or hand goes in, mm; common practice, no source. */
  private static final double NARROWEST_MM = 50;

  private static final Formula.Of4 GROSS =
      Formula.of("gross_volume_l", "net + driver + bracing + port", "l", Source.DEFINITION)
          .with("net", "driver", "bracing", "port", (net, d, b, p) -> net + d + b + p);

  private static final Card<BoxPanelsRequest, BoxPanelsResult> CARD =
      Card.of("box-panels", BoxPanelsRequest.class, BoxPanelsResult.class)
          .title("Panels of a box")
          .purpose(
              "The dimension that is still open and the cut list of a rectangular or wedge-shaped"
                  + " box from the volume it shall hold, the thickness of the board and what the"
                  + " vehicle leaves room for; its mass, and whether the driver fits.")
          .example(
              """
              {"volume_l": 28, "driver_displacement_l": 2.5, "bracing_l": 0.8,
               "board_mm": 18, "measured": "outside", "width_mm": 600, "height_mm": 360,
               "back_angle_deg": 22, "driver_cutout_mm": 278, "driver_depth_mm": 140}
              """)
          .sources(Carcass.TRAPEZOID, Source.DEFINITION, Source.COMMON_PRACTICE)
          .limits(
              "Butt joints glued square, the sides outside: another joint changes the panels, not"
                  + " the volume.",
              "The width of the saw cut and waste are not in the panels or their area.",
              "The front is upright; for a box that leans as a whole turn it in mind.")
          .findings(CarpentryFinding.values())
          .refusals(CarpentryFault.values())
          .cautions(Safety.RESTRAINT)
          .build();

  @Override
  public Card<BoxPanelsRequest, BoxPanelsResult> card() {
    return CARD;
  }

  @Override
  public BoxPanelsResult compute(BoxPanelsRequest q, Run run) {
    Carcass box = new DimensionRules(q, run).box(grossL(q, run)).orElseThrow(run::refused);
    Size in = box.inside();
    double lean = run.apply(Carcass.LEAN, in.depthMm(), in.topDepthMm(), in.heightMm());
    run.apply(Carcass.BOARDS_IN_DEPTH, q.front(), q.boardMm(), lean);
    double inside = volume(in, run);
    double outside = volume(box.outside(), run);
    double boards = run.apply(Carcass.MASS, q.boardDensityKgPerM3(), outside, inside);
    double hole =
        q.driverCutoutMm() == null
            ? 0
            : run.apply(Carcass.HOLE, q.boardDensityKgPerM3(), q.driverCutoutMm(), q.front());
    List<Panel> panels = new CutList(box, q).panels();
    narrow(q, in, run);
    remark(q, in, boards - hole, run);
    return new BoxPanelsResult(
        inside,
        outside,
        in,
        box.outside(),
        box.angleDeg(),
        CutList.areaM2(panels),
        boards - hole,
        panels);
  }

  /** What the box must hold with what takes up room in it, litre. */
  static double grossL(BoxPanelsRequest q, Arithmetic arithmetic) {
    return arithmetic.apply(
        GROSS, q.volumeL(), q.driverDisplacementL(), q.bracingL(), q.portDisplacementL());
  }

  private static double volume(Size size, Run run) {
    return run.apply(
        Carcass.VOLUME, size.widthMm(), size.heightMm(), size.depthMm(), size.topDepthMm());
  }

  /** Where the driver's own size is not given, the least that any driver needs counts. */
  private static void narrow(BoxPanelsRequest q, Size in, Run run) {
    if (q.driverCutoutMm() == null) {
      narrow(Inside.WIDTH, in.widthMm(), run);
      narrow(Inside.HEIGHT, in.heightMm(), run);
    }
    if (q.driverDepthMm() == null) {
      narrow(Inside.DEPTH, (in.depthMm() + in.topDepthMm()) / 2, run);
    }
  }

  private static void narrow(Inside dimension, double mm, Run run) {
    if (mm < NARROWEST_MM) {
      run.find(INSIDE_TOO_NARROW)
          .at(dimension.at())
          .value(mm)
          .limit(NARROWEST_MM)
          .with("dimension", dimension);
    }
  }

  private static void remark(BoxPanelsRequest q, Size in, double mass, Run run) {
    if (q.driverCutoutMm() != null) {
      double rim = (Math.min(in.widthMm(), in.heightMm()) - q.driverCutoutMm()) / 2;
      if (rim < LEAST_RIM_MM) {
        run.find(CUTOUT_NEAR_EDGE).at("/driver_cutout_mm").value(rim).limit(LEAST_RIM_MM);
      }
    }
    double room = (in.depthMm() + in.topDepthMm()) / 2 + q.front();
    if (q.driverDepthMm() != null && q.driverDepthMm() >= room) {
      run.find(DRIVER_TOO_DEEP).at("/driver_depth_mm").value(q.driverDepthMm()).limit(room);
    }
    // The second longest side is the shorter one of the largest panel.
    double span =
        Math.max(
            Math.min(in.widthMm(), in.heightMm()),
            Math.min(Math.max(in.widthMm(), in.heightMm()), in.depthMm()));
    if (q.bracingL() == 0 && span > SPAN_IN_THICKNESSES * q.boardMm()) {
      run.find(PANEL_WANTS_BRACE)
          .at("/bracing_l")
          .value(span)
          .limit(SPAN_IN_THICKNESSES * q.boardMm());
    }
    if (mass > HEAVY_KG) {
      run.find(BOX_MUST_BE_HELD).at("/board_density_kg_per_m3").value(mass).limit(HEAVY_KG);
    }
  }
}
