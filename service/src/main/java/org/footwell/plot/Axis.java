package org.footwell.plot;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.footwell.sheet.FigureWriter;

/**
 * One axis: from where to where it reaches, what stands at it, and where a value lies on it.
 *
 * @param label what it shows, with its unit
 * @param from value at its start
 * @param to value at its end, above {@code from}
 * @param logarithmic whether equal ratios are equally long; both ends are then above 0
 * @param ticks rising, within both ends
 */
public record Axis(String label, double from, double to, boolean logarithmic, List<Tick> ticks) {

  /** More would stand too close, fewer would leave the eye alone. */
  private static final int MOST_STEPS = 8;

  /**
   * A mark on it.
   *
   * @param text what stands there; empty for a line only
   */
  public record Tick(double value, String text) {}

  public Axis {
    require(from < to && (!logarithmic || from > 0), from, to);
    ticks = List.copyOf(ticks);
  }

  private static void require(boolean possible, double from, double to) {
    if (!possible) {
      throw new IllegalArgumentException("axis from " + from + " to " + to);
    }
  }

  /**
   * Frequencies in Hz on a logarithmic axis; numbers stand at 1, 2 and 5 of each decade, lines at all
   * from 1 to 9.
   */
  public static Axis ofFrequency(String label, double fromHz, double toHz) {
    require(fromHz > 0 && fromHz < toHz, fromHz, toHz);
    List<Tick> ticks = new ArrayList<>();
    for (int decade = (int) Math.floor(Math.log10(fromHz));
        Math.pow(10, decade) <= toHz;
        decade++) {
      for (int digit = 1; digit <= 9; digit++) {
        double hz = digit * Math.pow(10, decade);
        if (hz >= fromHz * (1 - 1e-9) && hz <= toHz * (1 + 1e-9)) {
          boolean told = digit == 1 || digit == 2 || digit == 5;
          ticks.add(new Tick(hz, told ? frequency(hz) : ""));
        }
      }
    }
    return new Axis(label, fromHz, toHz, true, ticks);
  }

  private static String frequency(double hz) {
    return hz >= 1000 ? Math.round(hz / 1000) + " k" : String.valueOf(Math.round(hz));
  }

  /**
   * A linear axis that holds some values: its ends are whole steps of 1, 2 or 5 times a power of ten, at
   * most {@value #MOST_STEPS} of them.
   *
   * @param figures in whose language its numbers are written
   * @param low smallest value
   * @param high largest value; where it is not above the smallest, room is made around them
   */
  public static Axis around(String label, FigureWriter figures, double low, double high) {
    double room = high > low ? high - low : Math.max(1, Math.abs(low));
    double step = step(room / MOST_STEPS);
    long first = (long) Math.floor(low / step + 1e-9);
    long last = (long) Math.ceil(high / step - 1e-9);
    if (last - first > MOST_STEPS) {
      step = step(step * 1.01);
      first = (long) Math.floor(low / step + 1e-9);
      last = (long) Math.ceil(high / step - 1e-9);
    }
    last = last > first ? last : first + 1;
    List<Tick> ticks = new ArrayList<>();
    int digits = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
    for (long k = first; k <= last; k++) {
      ticks.add(
          new Tick(
              k * step,
              figures
                  .number(BigDecimal.valueOf(k * step).setScale(digits, RoundingMode.HALF_UP))
                  .text()));
    }
    return new Axis(label, first * step, last * step, false, ticks);
  }

  /** The smallest of 1, 2, 5, 10, … that is no less. */
  private static double step(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * power >= least * (1 - 1e-9)) {
        return factor * power;
      }
    }
    return 10 * power;
  }

  /** Where a value lies: 0 at the start, 1 at the end, beyond them where it is outside. */
  public double at(double value) {
    return logarithmic
        ? Math.log(value / from) / Math.log(to / from)
        : (value - from) / (to - from);
  }

  /** The same where it is drawn: not beyond the ends. */
  double shown(double value) {
    return Math.max(0, Math.min(1, at(value)));
  }

  /** Index of the value that lies nearest to another. */
  int nearest(double value, List<Double> among) {
    int nearest = 0;
    for (int i = 1; i < among.size(); i++) {
      if (away(among.get(i), value) < away(among.get(nearest), value)) {
        nearest = i;
      }
    }
    return nearest;
  }

  private double away(double one, double other) {
    return Math.abs(at(one) - at(other));
  }
}
