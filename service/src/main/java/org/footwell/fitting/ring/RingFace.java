package org.footwell.fitting.ring;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.List;
import java.util.stream.Stream;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.fitting.ring.drawing.Oval;
import org.footwell.fitting.ring.drawing.Plate;
import org.footwell.fitting.ring.drawing.RingGeometry;
import org.footwell.fitting.ring.drawing.RingHole;
import org.footwell.fitting.ring.drawing.Walls;
import org.locationtech.jts.geom.Geometry;

/** One face of the ring and the length of all its edges. */
record RingFace(double areaMm2, double edgesMm) {

  static final Formula.Of2 HOLES_AREA =
      Formula.of("holes_area_mm2", "n·π/4·d²", "mm²", Oval.ELLIPSE)
          .with("n", "d", (n, d) -> n * Math.PI / 4 * d * d);
  static final Formula.Of4 FACE_AREA =
      Formula.of("face_area_mm2", "A − Ai − Af − Ap", "mm²", DEFINITION)
          .with("A", "Ai", "Af", "Ap", (a, inner, factory, pilots) -> a - inner - factory - pilots);

  /** By formula; where holes overlap or break an edge, by what they leave of the polygon. */
  static RingFace of(RingGeometry ring, Walls walls, Arithmetic arithmetic) {
    if (!Plate.whole(walls, ring.arcToleranceMm())) {
      Geometry left = Plate.of(ring, walls);
      return new RingFace(left.getArea(), left.getLength());
    }
    double area =
        arithmetic.apply(
            FACE_AREA,
            arithmetic.apply(Oval.AREA, ring.outer().widthMm(), ring.outer().heightMm()),
            arithmetic.apply(Oval.AREA, ring.inner().widthMm(), ring.inner().heightMm()),
            holesArea(ring.factoryHoles(), arithmetic),
            holesArea(ring.pilotHoles(), arithmetic));
    double edges =
        arithmetic.apply(Oval.PERIMETER, ring.outer().widthMm(), ring.outer().heightMm())
            + arithmetic.apply(Oval.PERIMETER, ring.inner().widthMm(), ring.inner().heightMm())
            + Stream.concat(ring.factoryHoles().stream(), ring.pilotHoles().stream())
                .mapToDouble(hole -> Math.PI * hole.diameterMm())
                .sum();
    return new RingFace(area, edges);
  }

  private static double holesArea(List<RingHole> holes, Arithmetic arithmetic) {
    return arithmetic.apply(HOLES_AREA, holes.size(), holes.get(0).diameterMm());
  }
}
