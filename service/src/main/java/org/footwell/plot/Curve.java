package org.footwell.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What is drawn into a plot.
 *
 * @param name what it is called, as anyone may have written it
 * @param kind how it is drawn
 * @param points from left to right; one that is not finite interrupts the curve
 */
public record Curve(String name, Kind kind, List<Point> points) {

  /** Of a line, as a part of the axis: about one unit of 300. */
  private static final double LINE_WIDTH = 0.0033;

  /** How a curve is drawn. */
  public enum Kind {
    /** Something that was worked out. */
    FOUND,
    /** Where something must stay on one side of. */
    LIMIT,
    /** What is wanted. */
    WANTED
  }

  /** A place by the values of both axes. */
  public record Point(double x, double y) {
    boolean finite() {
      return Double.isFinite(x) && Double.isFinite(y);
    }
  }

  public Curve {
    points = List.copyOf(points);
  }

  /** A curve over values side by side; a null interrupts it. */
  public static Curve of(String name, Kind kind, List<Double> x, List<Double> y) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < x.size(); i++) {
      Double here = y.get(i);
      points.add(new Point(x.get(i), here == null ? Double.NaN : here));
    }
    return new Curve(name, kind, points);
  }

  /** A value that is the same everywhere between two places. */
  public static Curve level(String name, Kind kind, double from, double to, double value) {
    return new Curve(name, kind, List.of(new Point(from, value), new Point(to, value)));
  }

  /** What it has at the place nearest to one on an axis; NaN where it is interrupted. */
  double nearest(double value, Axis axis) {
    if (points.isEmpty()) {
      return Double.NaN;
    }
    return points.get(axis.nearest(value, points.stream().map(Point::x).toList())).y();
  }

  /** Whether both were drawn as one line: as far as the axis shows, they differ by less than it is wide. */
  boolean coincides(Curve other, Axis y) {
    return kind == other.kind
        && points.size() == other.points.size()
        && IntStream.range(0, points.size())
            .allMatch(k -> coincide(points.get(k), other.points.get(k), y));
  }

  private static boolean coincide(Point one, Point other, Axis y) {
    return one.x() == other.x()
        && one.finite() == other.finite()
        && (!one.finite() || Math.abs(y.shown(one.y()) - y.shown(other.y())) < LINE_WIDTH);
  }

  /** The same line for another as well. */
  Curve with(Curve other) {
    return new Curve(name + ", " + other.name, kind, points);
  }
}
