package org.footwell.fitting.ring.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * The surface of a ring in triangles: the panel's side at z = 0, the driver's at the thickness.
 * Corners of a triangle go counter-clockwise seen from outside.
 */
public final class RingSolid {

  /** A corner, mm. */
  record Corner(double x, double y, double z) {}

  /** Three corners by number, counter-clockwise from outside. */
  record Triangle(int a, int b, int c) {}

  private final double thickness;
  private final List<Corner> corners = new ArrayList<>();
  private final List<Triangle> triangles = new ArrayList<>();

  /** The corner on the panel's side; the one on the driver's side is the next. */
  private final Map<Coordinate, Integer> numbers = new HashMap<>();

  private RingSolid(double thickness) {
    this.thickness = thickness;
  }

  /** The solid of a ring. */
  public static RingSolid of(DrawnRing ring) {
    RingSolid solid = new RingSolid(ring.thicknessMm());
    Geometry plate = Plate.of(ring.geometry(), ring.walls());
    for (int i = 0; i < plate.getNumGeometries(); i++) {
      if (plate.getGeometryN(i) instanceof Polygon piece && !piece.isEmpty()) {
        solid.extrude(piece);
      }
    }
    return solid;
  }

  /** How many triangles it has. */
  public int triangleCount() {
    return triangles.size();
  }

  List<Triangle> triangles() {
    return triangles;
  }

  Corner corner(int number) {
    return corners.get(number);
  }

  private void extrude(Polygon piece) {
    faces(piece);
    wall(piece.getExteriorRing(), true);
    for (int i = 0; i < piece.getNumInteriorRing(); i++) {
      wall(piece.getInteriorRingN(i), false);
    }
  }

  private void faces(Polygon piece) {
    Geometry faces = PolygonTriangulator.triangulate(piece);
    for (int i = 0; i < faces.getNumGeometries(); i++) {
      Coordinate[] face = faces.getGeometryN(i).getCoordinates();
      boolean counterClockwise =
          Orientation.index(face[0], face[1], face[2]) == Orientation.COUNTERCLOCKWISE;
      Coordinate second = face[counterClockwise ? 1 : 2];
      Coordinate third = face[counterClockwise ? 2 : 1];
      triangles.add(new Triangle(front(face[0]), front(second), front(third)));
      triangles.add(new Triangle(behind(face[0]), behind(third), behind(second)));
    }
  }

  /** Goes along an edge with the material to the left, so that the right is outside. */
  private void wall(LinearRing edge, boolean outer) {
    Coordinate[] along =
        (Orientation.isCCW(edge.getCoordinates()) == outer ? edge : edge.reverse())
            .getCoordinates();
    for (int i = 1; i < along.length; i++) {
      Coordinate from = along[i - 1];
      Coordinate to = along[i];
      triangles.add(new Triangle(behind(from), behind(to), front(to)));
      triangles.add(new Triangle(behind(from), front(to), front(from)));
    }
  }

  private int behind(Coordinate at) {
    return numbers.computeIfAbsent(
        at,
        c -> {
          corners.add(new Corner(c.x, c.y, 0));
          corners.add(new Corner(c.x, c.y, thickness));
          return corners.size() - 2;
        });
  }

  private int front(Coordinate at) {
    return behind(at) + 1;
  }

  /** Whether every edge belongs to two triangles that run along it in opposite directions. */
  public boolean closed() {
    Set<Long> edges = new HashSet<>(4 * triangles.size());
    for (Triangle t : triangles) {
      if (!edges.add(edge(t.a, t.b)) || !edges.add(edge(t.b, t.c)) || !edges.add(edge(t.c, t.a))) {
        return false;
      }
    }
    for (Triangle t : triangles) {
      if (!edges.contains(edge(t.b, t.a))
          || !edges.contains(edge(t.c, t.b))
          || !edges.contains(edge(t.a, t.c))) {
        return false;
      }
    }
    return true;
  }

  private static long edge(int from, int to) {
    return (long) from << Integer.SIZE | to;
  }

  /** Volume in mm³ by the divergence theorem; positive when the triangles face outwards. */
  public double volume() {
    double six = 0;
    for (Triangle t : triangles) {
      Corner a = corner(t.a);
      Corner b = corner(t.b);
      Corner c = corner(t.c);
      six +=
          a.x * (b.y * c.z - b.z * c.y)
              + a.y * (b.z * c.x - b.x * c.z)
              + a.z * (b.x * c.y - b.y * c.x);
    }
    return six / 6;
  }
}
