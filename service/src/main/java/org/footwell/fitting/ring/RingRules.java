package org.footwell.fitting.ring;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.ring.AdapterRingRequest.RingMaking;
import org.footwell.fitting.ring.AdapterRingResult.Room;
import org.footwell.fitting.ring.drawing.Oval;
import org.footwell.fitting.ring.drawing.RingGeometry;
import org.footwell.fitting.ring.drawing.RingHole;
import org.footwell.fitting.ring.drawing.Walls;

/** What does not fit, what holds badly and what summer does to it. */
final class RingRules {

  /** Wall around a pilot that makes a boss of two screw diameters, mm. */
  static final Formula.Of2 PILOT_WALL =
      Formula.of("pilot_wall_mm", "(2·d − p)/2", "mm", RingThickness.SCREWS)
          .with("d", "p", (screw, pilot) -> (2 * screw - pilot) / 2);

  static final Formula.Of2 ENGAGEMENT =
      Formula.of("screw_engagement", "t/d", "", DEFINITION).with("t", "d", (t, d) -> t / d);

  /** Nearer than this to its softening a part creeps under load, K; common practice. */
  private static final double HEAT_MARGIN = 15;

  /** What a printer leaves of ISO 216 A4, 210 by 297 mm, for the ring above its legend, mm. */
  private static final Oval SHEET = new Oval(190, 230);

  /** What was laid out to a limit may miss it by this, mm. */
  private static final double ROUNDING = 1e-9;

  /** Thicker than this a ring is a lever, mm; common practice, no source. */
  private static final double THICK_MM = 25;

  private final AdapterRingRequest q;
  private final Run run;

  RingRules(AdapterRingRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  void depth(RingThickness thickness, Room room) {
    Double highest = thickness.highest();
    if (highest != null && highest < thickness.lowest()) {
      run.find(RingFinding.NO_THICKNESS_FITS)
          .at("/opening")
          .value(thickness.lowest())
          .limit(highest)
          .with("lacking", thickness.lowest() - highest);
    } else if (highest != null && thickness.taken() > highest) {
      run.find(RingFinding.HITS_GRILLE)
          .at("/opening/grille_mm")
          .value(thickness.taken())
          .limit(highest)
          .with("left", room.grilleMm());
    }
    if (thickness.taken() < thickness.lowest()) {
      run.find(RingFinding.HITS_BEHIND)
          .at("/ring/thickness_mm")
          .value(thickness.taken())
          .limit(thickness.lowest())
          .with("left", room.depthMm());
    }
    if (thickness.lowest() == 0) {
      run.find(RingFinding.DEPTH_NEEDS_NO_RING).at("/opening/depth_mm").value(room.depthMm());
    }
    if (highest == null) {
      run.find(RingFinding.GRILLE_NOT_GIVEN).at("/opening/grille_mm");
    } else if (q.driver().excursionMm() == null) {
      run.find(RingFinding.EXCURSION_NOT_GIVEN).at("/driver/excursion_mm").value(room.grilleMm());
    }
  }

  void openings(Room room) {
    if (room.magnetMm() < 0) {
      run.find(RingFinding.MAGNET_TOO_WIDE)
          .at("/driver/magnet_diameter_mm")
          .value(q.driver().magnetDiameterMm())
          .limit(q.driver().magnetDiameterMm() + 2 * room.magnetMm());
    } else if (room.basketMm() < 0 && q.driver().basketDiameterMm() != null) {
      run.find(RingFinding.BASKET_TOO_WIDE)
          .at("/driver/basket_diameter_mm")
          .value(q.driver().basketDiameterMm())
          .limit(q.driver().basketDiameterMm() + 2 * room.basketMm());
    } else if (room.basketMm() < 0) {
      run.find(RingFinding.BASKET_UNKNOWN)
          .at("/driver/basket_diameter_mm")
          .value(-room.basketMm())
          .with(
              "depth",
              q.ring().thicknessMm() == null
                  ? Phrase.of(RingWords.RINGS_THICKNESS)
                  : Phrase.of(RingWords.MILLIMETRES).with("mm", q.ring().thicknessMm()));
    }
    double wall = q.ring().wallMinimumMm();
    if (room.overlapMm() <= 0) {
      run.find(RingFinding.CUT_OUT_NOT_COVERED).at("/ring/outer").value(-room.overlapMm());
    } else if (room.overlapMm() < wall) {
      run.find(RingFinding.OVERLAP_SMALL).at("/ring/outer").value(room.overlapMm()).limit(wall);
    }
    if (room.limitMm() != null && room.limitMm() < 0) {
      run.find(RingFinding.OUTER_BEYOND_LIMIT).at("/opening/limit").value(-room.limitMm());
    }
    if (room.beyondFrameMm() < 0) {
      run.find(RingFinding.FRAME_OVERHANGS).at("/ring/outer").value(-room.beyondFrameMm());
    }
  }

  void walls(Walls walls) {
    RingMaking ring = q.ring();
    double least = ring.wallMinimumMm();
    double aroundPilot = run.apply(PILOT_WALL, ring.screwMm(), ring.pilotMm());
    wall(Edges.OUTER_AND_INNER, "/ring", walls.rimMm(), least);
    edge(Edges.FACTORY_AND_OUTER, "/opening/holes", walls.factoryToOuterMm());
    edge(Edges.FACTORY_AND_INNER, "/opening/holes", walls.factoryToInnerMm());
    edge(Edges.PILOT_AND_OUTER, "/driver/holes", walls.pilotToOuterMm());
    edge(Edges.PILOT_AND_INNER, "/driver/holes", walls.pilotToInnerMm());
    if (walls.pilotToFactoryMm() <= 0) {
      run.find(RingFinding.HOLES_OVERLAP).at("/driver/holes").value(-walls.pilotToFactoryMm());
    } else {
      wall(Edges.PILOT_AND_FACTORY, "/driver/holes", walls.pilotToFactoryMm(), least);
    }
    double pilot =
        Math.min(
            Math.min(walls.pilotToOuterMm(), walls.pilotToInnerMm()), walls.pilotToFactoryMm());
    if (pilot >= least && pilot < aroundPilot) {
      run.find(RingFinding.PILOT_WALL_THIN).at("/driver/holes").value(pilot).limit(aroundPilot);
    }
  }

  private void edge(Edges between, String at, double wall) {
    if (wall <= 0) {
      run.find(RingFinding.HOLE_BREAKS_EDGE).at(at).value(-wall).with("between", between);
    } else {
      wall(between, at, wall, q.ring().wallMinimumMm());
    }
  }

  private void wall(Edges between, String at, double wall, double least) {
    RingMaterial material = q.ring().material();
    if (wall < material.kind.leastWallMm - ROUNDING) {
      run.find(RingFinding.WALL_TOO_THIN)
          .at(at)
          .value(wall)
          .limit(material.kind.leastWallMm)
          .with("between", between)
          .with("material", material);
    } else if (wall < least - ROUNDING) {
      run.find(RingFinding.WALL_THIN).at(at).value(wall).limit(least).with("between", between);
    }
  }

  void screws(RingThickness thickness, double engagement) {
    if (engagement < RingThickness.ENGAGEMENT) {
      run.find(RingFinding.ENGAGEMENT_SHORT)
          .at("/ring/thickness_mm")
          .value(engagement)
          .limit(RingThickness.ENGAGEMENT)
          .with("thickness", thickness.taken());
    }
    if (thickness.taken() < q.ring().wallMinimumMm()) {
      run.find(RingFinding.RING_THIN)
          .at("/ring/thickness_mm")
          .value(thickness.taken())
          .limit(q.ring().wallMinimumMm());
    }
    if (q.ring().fill() < 1 && q.ring().material().kind == RingMaterial.Kind.PLASTIC) {
      run.find(RingFinding.SPARSE_PRINT).at("/ring/fill").value(q.ring().fill());
    }
  }

  void thick(RingThickness thickness) {
    run.find(RingFinding.SCREWS_LONGER).at("/opening/holes").value(thickness.taken());
    if (thickness.taken() > THICK_MM) {
      run.find(RingFinding.RING_THICK)
          .at("/ring/thickness_mm")
          .value(thickness.taken())
          .limit(THICK_MM);
    }
  }

  void holes(RingGeometry ring, double turned) {
    if (q.driver().turnedDeg() == null && turned != 0) {
      run.find(RingFinding.DRIVER_TURNED).at("/driver/turned_deg").value(turned);
    }
    if (ring.factoryHoles().stream().anyMatch(hole -> hole.wallOutside(ring.frame()) < 0)) {
      run.find(RingFinding.HEADS_UNDER_FRAME).at("/opening/holes");
    }
    if (ring.pilotHoles().stream().anyMatch(hole -> overPanel(hole, ring))) {
      run.find(RingFinding.SCREWS_MEET_PANEL).at("/driver/holes");
    }
    if (SHEET.beyond(ring.outer()) < 0) {
      run.find(RingFinding.LARGER_THAN_SHEET).at("/ring/outer");
    }
  }

  private static boolean overPanel(RingHole hole, RingGeometry ring) {
    return hole.wallWithin(ring.panelCutOut()) < 0;
  }

  void weather() {
    RingMaking ring = q.ring();
    RingMaterial material = ring.material();
    if (ring.material().kind == RingMaterial.Kind.BOARD) {
      run.find(RingFinding.MOISTURE).at("/ring/material").with("material", material);
    }
    Double softening = ring.softeningC();
    if (softening == null) {
      return;
    }
    double hottest = ring.placeTemperatureC();
    RingFinding finding =
        softening <= hottest
            ? RingFinding.SOFTENS
            : softening < hottest + HEAT_MARGIN ? RingFinding.HEAT_MARGIN_SMALL : null;
    if (finding != null) {
      run.find(finding)
          .at("/ring/material")
          .value(softening)
          .limit(hottest)
          .with("material", material);
    }
  }
}
