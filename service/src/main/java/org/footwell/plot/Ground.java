package org.footwell.plot;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.footwell.plot.Drawing.Size;
import org.footwell.plot.SeenFromAbove.Kind;
import org.footwell.plot.SeenFromAbove.Spot;

/** The picture part of {@link SeenFromAbove}: places, ways, signs that do not overlap, and the scale. */
final class Ground {

  static final int WIDTH = 340;
  static final int HEIGHT = 420;
  private static final int ABOVE = 40;
  private static final int BELOW = 56;
  private static final int BESIDE = 40;

  /** A vehicle is at least as long as this, m: places close together are not blown up. */
  private static final double LEAST_M = 1;

  private static final double SEAT_M = 0.46;
  private static final int LETTER_HIGH = 13;
  private static final double[] NEAR = {13, 20, 28, 38};
  private static final int DIRECTIONS = 16;
  private static final int[] BARS = {1, 2, 5, 10, 20, 50};
  private static final double SHORTEST_BAR = 36;
  private static final int MARGIN = 16;

  private final List<Spot> spots;
  private final double scale;
  private final double shift;
  private final double middleM;
  private final double frontM;

  Ground(List<Spot> spots, Size size) {
    this.spots = spots;
    double rear = spots.stream().mapToDouble(Spot::forwardM).min().orElse(0);
    double front = spots.stream().mapToDouble(Spot::forwardM).max().orElse(0);
    double right = spots.stream().mapToDouble(Spot::leftM).min().orElse(0);
    double left = spots.stream().mapToDouble(Spot::leftM).max().orElse(0);
    scale =
        Math.min(
            (HEIGHT - ABOVE - BELOW) / Math.max(LEAST_M, front - rear),
            (WIDTH - 2.0 * BESIDE) / Math.max(LEAST_M, left - right));
    middleM = (left + right) / 2;
    double free = (HEIGHT - ABOVE - BELOW) / scale - (front - rear);
    frontM = front + free / 2;
    shift = size == Size.WIDE ? 0 : (size.width() - WIDTH) / 2.0;
  }

  private Point2D at(Spot spot) {
    return new Point2D.Double(
        shift + WIDTH / 2.0 - (spot.leftM() - middleM) * scale,
        ABOVE + (frontM - spot.forwardM()) * scale);
  }

  void draw(Svg svg, SeenFromAbove.AboveWords words) {
    for (Line2D way : ways()) {
      svg.line(
          way.getX1(),
          way.getY1(),
          way.getX2(),
          way.getY2(),
          "stroke-width=\"0.8\" opacity=\"0.5\"");
    }
    for (Spot spot : spots) {
      spot(svg, spot);
    }
    List<Rectangle2D> signs = signs();
    for (int i = 0; i < signs.size(); i++) {
      svg.text(
          signs.get(i).getCenterX(), signs.get(i).getMaxY() - 2, "middle", spots.get(i).sign());
    }
    forward(svg, words);
    bar(svg, words);
  }

  private List<Line2D> ways() {
    List<Line2D> ways = new ArrayList<>();
    for (Spot goal : spots) {
      if (goal.kind() == Kind.GOAL) {
        spots.stream()
            .filter(spot -> spot.kind() == Kind.SOURCE)
            .forEach(spot -> ways.add(new Line2D.Double(at(goal), at(spot))));
      }
    }
    return ways;
  }

  private void spot(Svg svg, Spot spot) {
    Point2D at = at(spot);
    if (spot.kind() == Kind.SOURCE) {
      svg.put("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"5\"/>\n", at.getX(), at.getY());
      return;
    }
    double half = SEAT_M / 2 * scale;
    String heavy = spot.kind() == Kind.GOAL ? "2.2" : "1";
    svg.put(
        "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"none\""
            + " stroke=\"currentColor\" stroke-width=\"%s\" opacity=\"0.6\"/>\n",
        at.getX() - half, at.getY() - half, 2 * half, 2 * half, heavy);
    svg.put(
        "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"7\" fill=\"none\" stroke=\"currentColor\""
            + " stroke-width=\"%s\"/>\n",
        at.getX(), at.getY(), heavy);
  }

  /** Where each sign stands: near its place, off all marks and other signs, off the ways if it can be. */
  List<Rectangle2D> signs() {
    List<Rectangle2D> taken = new ArrayList<>();
    for (Spot spot : spots) {
      Point2D at = at(spot);
      taken.add(new Rectangle2D.Double(at.getX() - 6, at.getY() - 6, 12, 12));
    }
    int marks = taken.size();
    List<Line2D> ways = ways();
    for (Spot spot : spots) {
      taken.add(sign(spot, taken, ways));
    }
    return taken.subList(marks, taken.size());
  }

  private Rectangle2D sign(Spot spot, List<Rectangle2D> taken, List<Line2D> ways) {
    Rectangle2D onAWay = null;
    Rectangle2D last = null;
    for (double far : NEAR) {
      for (int d = 0; d < DIRECTIONS; d++) {
        Rectangle2D tried = tried(spot, far, 2 * Math.PI * d / DIRECTIONS);
        last = tried;
        if (taken.stream().noneMatch(tried::intersects)) {
          if (ways.stream().noneMatch(tried::intersectsLine)) {
            return tried;
          }
          onAWay = onAWay == null ? tried : onAWay;
        }
      }
    }
    return onAWay == null ? last : onAWay;
  }

  /** First beside it on the outer side. */
  private Rectangle2D tried(Spot spot, double far, double turn) {
    Point2D at = at(spot);
    double outward = spot.leftM() > middleM ? -1 : 1;
    double wide = Svg.width(spot.sign()) + 2;
    double x = at.getX() + outward * Math.cos(turn) * (far + wide / 2 - 4);
    double y = at.getY() + Math.sin(turn) * far;
    return new Rectangle2D.Double(x - wide / 2, y - LETTER_HIGH / 2.0, wide, LETTER_HIGH);
  }

  private void forward(Svg svg, SeenFromAbove.AboveWords words) {
    double x = shift + WIDTH / 2.0;
    svg.put(
        "<path d=\"M%.1f 20V6M%.1f 11L%.1f 5L%.1f 11\" fill=\"none\" stroke=\"currentColor\""
            + " stroke-width=\"1.5\"/>\n",
        x, x - 5, x, x + 5);
    svg.text(x + 12, 17, "start", words.forward());
  }

  /** A bar of whole metres or feet, with a mark at half of it. */
  private void bar(Svg svg, SeenFromAbove.AboveWords words) {
    double one = words.ruler().metres() * scale;
    int length =
        Arrays.stream(BARS)
            .filter(bar -> bar * one >= SHORTEST_BAR)
            .findFirst()
            .orElse(BARS[BARS.length - 1]);
    double x = shift + MARGIN;
    double y = HEIGHT - 20.0;
    double end = x + length * one;
    svg.line(x, y, end, y, "stroke-width=\"2\"");
    for (double at : new double[] {x, (x + end) / 2, end}) {
      svg.line(at, y - 4, at, y + 4, "stroke-width=\"1\"");
    }
    svg.text(end + 6, y + 4, "start", length + " " + words.ruler().unit());
  }
}
