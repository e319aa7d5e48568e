package org.footwell.fitting.ring.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * The face of a ring as a polygon with holes. Straight edges stand for curves so that whatever has
 * to pass does: they lie within the outer edge, and around openings and holes.
 */
public final class Plate {

  private static final GeometryFactory SHAPES = new GeometryFactory();

  /** Holes at least as many edges, so that a screw is held all around. */
  private static final int FEWEST_EDGES = 12;

  /** Takes pieces apart that touch in a point: a solid cannot be printed from them, mm. */
  private static final double SLIT = 0.01;

  /** Corners stay corners. */
  private static final BufferParameters SHARP =
      new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 2);

  private Plate() {}

  /** Whether edges and holes stay clear of each other as they are drawn. */
  public static boolean whole(Walls walls, double arcTolerance) {
    return walls.smallestMm() > 2 * arcTolerance;
  }

  /** One polygon, or what holes that overlap leave of it. */
  public static Geometry of(RingGeometry ring, Walls walls) {
    double tolerance = ring.arcToleranceMm();
    LinearRing outer = inscribed(ring.outer(), tolerance);
    List<LinearRing> openings = openings(ring);
    if (whole(walls, tolerance)) {
      return SHAPES.createPolygon(outer, openings.toArray(new LinearRing[0]));
    }
    Geometry left = SHAPES.createPolygon(outer);
    for (LinearRing opening : openings) {
      left = left.difference(SHAPES.createPolygon(opening));
    }
    return BufferOp.bufferOp(left, -SLIT, SHARP);
  }

  private static List<LinearRing> openings(RingGeometry ring) {
    double tolerance = ring.arcToleranceMm();
    List<LinearRing> openings = new ArrayList<>();
    openings.add(circumscribed(ring.inner(), tolerance));
    Stream.concat(ring.factoryHoles().stream(), ring.pilotHoles().stream())
        .map(hole -> around(hole, tolerance))
        .forEach(openings::add);
    return openings;
  }

  private static LinearRing around(RingHole hole, double tolerance) {
    return circumscribed(Oval.round(hole.diameterMm()), hole.xMm(), hole.yMm(), tolerance);
  }

  /** Corners on the curve: no edge leaves it by more than the tolerance. */
  static LinearRing inscribed(Oval oval, double tolerance) {
    double radius = Math.max(oval.widthMm(), oval.heightMm()) / 2;
    return polygon(oval, 0, 0, edges(1 - tolerance / radius), 1);
  }

  /** Edges on the curve: no corner leaves it by more than the tolerance. */
  static LinearRing circumscribed(Oval oval, double tolerance) {
    return circumscribed(oval, 0, 0, tolerance);
  }

  private static LinearRing circumscribed(Oval oval, double x, double y, double tolerance) {
    double radius = Math.max(oval.widthMm(), oval.heightMm()) / 2;
    int edges = edges(1 / (1 + tolerance / radius));
    return polygon(oval, x, y, edges, 1 / Math.cos(Math.PI / edges));
  }

  /**
   * Edges of a regular polygon whose inner radius is this share of the outer one, or more; a
   * multiple of four, so that it reaches as far in all four directions.
   */
  private static int edges(double share) {
    double needed = Math.PI / Math.acos(Math.max(0, share));
    return 4 * (int) Math.ceil(Math.max(FEWEST_EDGES, needed) / 4);
  }

  private static LinearRing polygon(Oval oval, double x, double y, int edges, double scale) {
    Coordinate[] corners = new Coordinate[edges + 1];
    for (int i = 0; i < edges; i++) {
      double angle = 2 * Math.PI * i / edges;
      corners[i] =
          new Coordinate(
              x + scale * oval.widthMm() / 2 * Math.cos(angle),
              y + scale * oval.heightMm() / 2 * Math.sin(angle));
    }
    corners[edges] = corners[0].copy();
    return SHAPES.createLinearRing(corners);
  }
}
