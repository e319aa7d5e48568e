package org.footwell.plot;

import org.footwell.plot.Drawing.Size;

/**
 * Where the axes of a plot lie on the drawing.
 *
 * @param y from bottom to top
 */
record PlotFrame(Size size, Axis x, Axis y) {

  private static final int TOP = 16;

  /** Between the ends of two numbers at an axis. */
  private static final int APART = 5;

  private static final int NUMBERS = 16;
  private static final int LABEL = 36;
  private static final int BELOW = 48;

  double left() {
    return size == Size.WIDE ? 64 : 52;
  }

  double right() {
    return size.width() - 16.0;
  }

  double top() {
    return TOP;
  }

  double bottom() {
    return TOP + (size == Size.WIDE ? 300.0 : 240.0);
  }

  /** Where the axis with its numbers and its label ends. */
  double end() {
    return bottom() + BELOW;
  }

  /** How long the axis from left to right is. */
  double across() {
    return right() - left();
  }

  double across(double value) {
    return left() + x.at(value) * across();
  }

  double down(double value) {
    return top() + (1 - y.at(value)) * (bottom() - top());
  }

  void draw(Svg svg) {
    svg.put("<g class=\"grid\" stroke=\"currentColor\" stroke-width=\"0.5\">\n");
    for (Axis.Tick tick : x.ticks()) {
      svg.put(
          "<path d=\"M%.1f %.0fV%.0f\" opacity=\"%s\"/>\n",
          across(tick.value()), top(), bottom(), tick.text().isEmpty() ? "0.15" : "0.4");
    }
    for (Axis.Tick tick : y.ticks()) {
      svg.put(
          "<path d=\"M%.0f %.1fH%.0f\" opacity=\"0.4\"/>\n", left(), down(tick.value()), right());
    }
    svg.put("</g>\n<g class=\"ticks\">\n");
    numbersBelow(svg);
    for (Axis.Tick tick : y.ticks()) {
      svg.text(left() - 6, down(tick.value()) + 4, "end", tick.text());
    }
    svg.put("</g>\n");
    svg.text((left() + right()) / 2, bottom() + LABEL, "middle", Svg.fitting(x.label(), across()));
    svg.put(
        "<text transform=\"translate(14 %.0f) rotate(-90)\" text-anchor=\"middle\">%s</text>\n",
        (top() + bottom()) / 2, Svg.escaped(Svg.fitting(y.label(), bottom() - top())));
  }

  /** As many numbers as do not touch. */
  private void numbersBelow(Svg svg) {
    double taken = Double.NEGATIVE_INFINITY;
    for (Axis.Tick tick : x.ticks()) {
      double half = Svg.width(tick.text()) / 2;
      double at = across(tick.value());
      if (!tick.text().isEmpty() && at - half >= taken) {
        svg.text(at, bottom() + NUMBERS, "middle", tick.text());
        taken = at + half + APART;
      }
    }
  }
}
