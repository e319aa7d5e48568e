package org.footwell.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.footwell.sheet.FigureTable;
import org.footwell.sheet.WrittenFigure;

/**
 * What holds along an axis, stretch by stretch: strips below a plot, each stretch with a letter and a
 * shade of its own, and what the letters mean.
 *
 * @param label what the strips tell
 * @param marks what can hold, at most three of them
 */
public record Strips(String label, List<Mark> marks, List<Strip> strips) {

  private static final int HEADING = 20;
  private static final int ROW = 38;
  private static final int BAR = 16;
  private static final int GAP = 8;
  private static final double LEAST_FOR_A_LETTER = 9;
  private static final String[] SHADES = {"0.3", "0.03", "0.15"};

  /**
   * Something that can hold.
   *
   * @param letter stands for it
   */
  public record Mark(String letter, String meaning) {}

  /**
   * One strip.
   *
   * @param holds a mark for each place of {@code x}
   */
  public record Strip(String name, List<Double> x, List<Mark> holds) {
    public Strip {
      x = List.copyOf(x);
      holds = List.copyOf(holds);
    }

    /** What holds at the place nearest to another on an axis. */
    private Mark nearest(double value, Axis axis) {
      return holds.get(axis.nearest(value, x));
    }
  }

  public Strips {
    marks = List.copyOf(marks);
    strips = List.copyOf(strips);
  }

  int height(PlotFrame frame) {
    return HEADING + strips.size() * ROW + HEADING * legend(frame).size() + GAP;
  }

  void draw(Svg svg, PlotFrame frame, double top) {
    svg.heading(frame.left(), top + Svg.LETTERS, label);
    double y = top + HEADING;
    for (Strip strip : strips) {
      svg.text(frame.left(), y + Svg.LETTERS, "start", Svg.fitting(strip.name(), frame.across()));
      bar(svg, frame, strip, y + ROW - BAR - 4.0);
      y += ROW;
    }
    for (List<Mark> line : legend(frame)) {
      double x = frame.left();
      for (Mark mark : line) {
        box(svg, mark, x, y + 2, BAR);
        svg.text(x + BAR + 6.0, y + BAR - 2.0, "start", mark.meaning());
        x += wide(mark);
      }
      y += HEADING;
    }
  }

  /** Boundaries lie half way between places, as one sees them. */
  private void bar(Svg svg, PlotFrame frame, Strip strip, double y) {
    double from = frame.left();
    int last = strip.x().size() - 1;
    for (int k = 0; k <= last; k++) {
      Mark mark = strip.holds().get(k);
      if (k == last || !mark.equals(strip.holds().get(k + 1))) {
        double to =
            k == last
                ? frame.right()
                : (frame.across(strip.x().get(k)) + frame.across(strip.x().get(k + 1))) / 2;
        box(svg, mark, from, y, to - from);
        from = to;
      }
    }
  }

  private void box(Svg svg, Mark mark, double x, double y, double width) {
    String box =
        String.format(
            Locale.ROOT,
            "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%d\"",
            x,
            y,
            width,
            BAR);
    svg.put("%s opacity=\"%s\"/>\n", box, SHADES[marks.indexOf(mark) % SHADES.length]);
    svg.put("%s fill=\"none\" stroke=\"currentColor\" stroke-width=\"0.8\"/>\n", box);
    if (width >= LEAST_FOR_A_LETTER) {
      svg.text(x + width / 2, y + BAR - 4.0, "middle", mark.letter());
    }
  }

  private static double wide(Mark mark) {
    return BAR + 6 + Svg.width(mark.meaning()) + 14;
  }

  /** What the marks mean, as many in a line as have room. */
  private List<List<Mark>> legend(PlotFrame frame) {
    List<List<Mark>> lines = new ArrayList<>();
    double left = 0;
    for (Mark mark : marks) {
      if (lines.isEmpty() || wide(mark) > left) {
        lines.add(new ArrayList<>());
        left = frame.across();
      }
      lines.get(lines.size() - 1).add(mark);
      left -= wide(mark);
    }
    return lines;
  }

  /** What the letters mean, in a line. */
  String meanings() {
    return marks.stream()
        .map(mark -> mark.letter() + ": " + mark.meaning())
        .collect(Collectors.joining(", "));
  }

  /** Rows of the table beside the plot. */
  List<FigureTable.Row> rows(List<Axis.Tick> at, Axis axis) {
    return strips.stream()
        .map(
            strip ->
                new FigureTable.Row(
                    label + ": " + strip.name(),
                    at.stream()
                        .map(
                            tick ->
                                new WrittenFigure(null, strip.nearest(tick.value(), axis).letter()))
                        .toList()))
        .toList();
  }
}
