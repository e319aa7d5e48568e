package org.footwell.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.footwell.plot.SeenFromAbove.Kind;
import org.footwell.plot.SeenFromAbove.Spot;
import org.footwell.sheet.FigureTable;
import org.footwell.sheet.WrittenFigure;
import org.junit.jupiter.api.Test;

/** Places seen from above. */
class SeenFromAboveTest {

  private static final Pattern DOT =
      Pattern.compile("<circle cx=\"([0-9.]+)\" cy=\"([0-9.]+)\" r=\"5\"");
  private static final Pattern BAR =
      Pattern.compile("M([0-9.]+) 400.0L([0-9.]+) 400.0\"[^>]*stroke-width=\"2\"");

  private static SeenFromAbove picture(List<Spot> spots) {
    return picture(spots, new SeenFromAbove.Ruler("m", 1));
  }

  private static SeenFromAbove picture(List<Spot> spots, SeenFromAbove.Ruler ruler) {
    return new SeenFromAbove(
        "cabin",
        "Cabin",
        "Seen from above",
        new SeenFromAbove.AboveWords("forward", ruler, "Place", "Lengths"),
        List.of(new SeenFromAbove.Column("way", "m")),
        spots);
  }

  private static Spot source(String sign, double forward, double left) {
    return new Spot(
        sign, "driver " + sign, Kind.SOURCE, forward, left, List.of(new WrittenFigure(1, "1")));
  }

  private static Spot seat(double forward, double left) {
    return new Spot("A", "seat", Kind.GOAL, forward, left, List.of());
  }

  private static List<double[]> all(Pattern pattern, String svg) {
    List<double[]> found = new ArrayList<>();
    for (Matcher m = pattern.matcher(svg); m.find(); ) {
      found.add(new double[] {Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))});
    }
    return found;
  }

  @Test
  void forwardIsUpLeftIsLeftAndAMetreIsAsLongEachWay() {
    List<Spot> spots =
        List.of(seat(0, 0), source("1", 1, 0.5), source("2", 1, -0.5), source("3", -1, 0.5));
    for (Drawing.Size size : Drawing.Size.values()) {
      String svg = picture(spots).svg(size);
      List<double[]> dots = all(DOT, svg);
      double[] bar = all(BAR, svg).get(0);
      double metre = bar[1] - bar[0];
      assertTrue(svg.contains(">1 m<"), svg);
      // 1 is left of 2 and in front of 3.
      assertEquals(metre, dots.get(1)[0] - dots.get(0)[0], 0.11);
      assertEquals(2 * metre, dots.get(2)[1] - dots.get(0)[1], 0.11);
      assertEquals(dots.get(0)[1], dots.get(1)[1]);
      assertEquals(dots.get(0)[0], dots.get(2)[0]);
    }
  }

  /** However large the vehicle is, it is round in its unit and neither a dot nor wider than the picture. */
  @Test
  void theBarIsAsLongAsItSays() {
    Pattern said = Pattern.compile(">([0-9]+) (m|ft)<");
    for (double apart : new double[] {0.5, 2, 5, 9, 14}) {
      List<Spot> spots = List.of(seat(0, 0), source("1", apart, 0), source("2", 0, 0));
      for (SeenFromAbove.Ruler ruler :
          List.of(new SeenFromAbove.Ruler("m", 1), new SeenFromAbove.Ruler("ft", 0.3048))) {
        String svg = picture(spots, ruler).svg();
        List<double[]> dots = all(DOT, svg);
        double metre = (dots.get(1)[1] - dots.get(0)[1]) / apart;
        double[] bar = all(BAR, svg).get(0);
        Matcher length = said.matcher(svg);
        assertTrue(length.find(), svg);
        assertEquals(ruler.unit(), length.group(2));
        double metres = Integer.parseInt(length.group(1)) * ruler.metres();
        assertEquals(metres * metre, bar[1] - bar[0], 0.11 + 0.11 * metres / apart, svg);
        assertTrue(Set.of("1", "2", "5", "10", "20").contains(length.group(1)), length.group());
        assertTrue(bar[1] - bar[0] >= 35.9 && bar[1] < 300, svg);
      }
    }
  }

  @Test
  void signsDoNotOverlapWhereverPlacesAreInAVehicle() {
    Random random = new Random(20_261_129);
    for (int trial = 0; trial < 200; trial++) {
      List<Spot> spots = new ArrayList<>();
      spots.add(seat(0, 0.4));
      int count = 1 + random.nextInt(12);
      for (int d = 1; d <= count; d++) {
        spots.add(
            source(
                String.valueOf(d),
                3 * random.nextDouble() - 1.8,
                1.5 * random.nextDouble() - 0.75));
      }
      List<Rectangle2D> signs = new Ground(spots, Drawing.Size.NARROW).signs();
      for (int i = 0; i < signs.size(); i++) {
        Rectangle2D one = signs.get(i);
        assertTrue(one.getMinX() >= 0 && one.getMaxX() <= 360, spots.toString());
        for (int j = 0; j < i; j++) {
          assertFalse(one.intersects(signs.get(j)), spots.toString());
        }
      }
    }
  }

  @Test
  void theTableHasWhatHasFigures() {
    FigureTable table = picture(List.of(seat(0, 0), source("1", 1, 0.5))).table();
    assertEquals(List.of("way, m"), table.columns());
    assertEquals(List.of("1 driver 1"), table.rows().stream().map(FigureTable.Row::name).toList());
  }
}
