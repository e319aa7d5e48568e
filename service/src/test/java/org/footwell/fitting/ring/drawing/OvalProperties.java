package org.footwell.fitting.ring.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class OvalProperties {

  private static final double TOLERANCE = 1e-4;

  @Property
  void distanceFromAnOvalIsThatOfAGeometryLibrary(
      @ForAll @DoubleRange(min = 20, max = 300) double width,
      @ForAll @DoubleRange(min = 20, max = 300) double height,
      @ForAll @DoubleRange(min = -200, max = 200) double x,
      @ForAll @DoubleRange(min = -200, max = 200) double y) {
    Oval oval = new Oval(width, height);
    Geometry edge = Plate.inscribed(oval, TOLERANCE);
    double library = edge.distance(new GeometryFactory().createPoint(new Coordinate(x, y)));
    assertEquals(library, Math.abs(oval.inside(x, y)), 2 * TOLERANCE);
  }

  @Property
  void onTheAxesTheDistanceIsSteady(
      @ForAll @DoubleRange(min = 20, max = 300) double width,
      @ForAll @DoubleRange(min = 20, max = 300) double height,
      @ForAll @DoubleRange(min = -200, max = 200) double along) {
    Oval oval = new Oval(width, height);
    for (double aside : new double[] {1e-16, 1e-12, 1e-9, 1e-7, 1e-6}) {
      assertEquals(oval.inside(along, 0), oval.inside(along, aside), 1e-5);
      assertEquals(oval.inside(0, along), oval.inside(aside, along), 1e-5);
    }
  }

  @Property
  void aPerimeterIsThatOfAFinePolygon(
      @ForAll @DoubleRange(min = 20, max = 300) double width,
      @ForAll @DoubleRange(min = 20, max = 300) double height) {
    double polygon = Plate.inscribed(new Oval(width, height), TOLERANCE).getLength();
    double within = Math.max(width, height) / Math.min(width, height) <= 5 ? 5e-5 : 1e-3;
    assertEquals(polygon, Oval.PERIMETER.at(width, height), within * polygon);
  }
}
