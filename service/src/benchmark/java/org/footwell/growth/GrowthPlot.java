package org.footwell.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.footwell.growth.CostGrowth.Measured;
import org.footwell.plot.Axis;
import org.footwell.plot.Axis.Tick;
import org.footwell.plot.Curve;
import org.footwell.plot.Plot;
import org.footwell.plot.PlotSheet;
import org.footwell.plot.TableColumns;
import org.footwell.sheet.WrittenFigure;

/** Time over size, one plot for each thing that size counts, with the dearest calculations in it. */
final class GrowthPlot {

  private static final int MOST_CURVES = 8;
  private static final String TIME = "ms of a processor";

  /** By what size counts. */
  private static final Map<String, String> TITLES =
      new TreeMap<>(
          Map.of(
              "values", "Dearest answers by the values in their request",
              "samples", "Answers by the samples of each of six recordings",
              "drawn", "Tolerances by the samples they draw"));

  private GrowthPlot() {}

  static String of(List<Measured> all) {
    return PlotSheet.svg(
        TITLES.entrySet().stream()
            .filter(title -> all.stream().anyMatch(one -> one.ladder().unit().equals(title.getKey())))
            .map(title -> plot(all, title.getKey(), title.getValue()))
            .toList());
  }

  private static Plot plot(List<Measured> all, String unit, String title) {
    List<Measured> dearest =
        all.stream()
            .filter(one -> one.ladder().unit().equals(unit))
            .sorted(Comparator.comparing(one -> -one.dearest().ms()))
            .limit(MOST_CURVES)
            .toList();
    Axis x = decades(title.replaceFirst(".* the ", ""), sizes(dearest));
    Axis y = decades(TIME, times(dearest));
    List<Curve> curves = new ArrayList<>();
    for (Measured one : dearest) {
      curves.add(
          new Curve(
              one.ladder().id(),
              Curve.Kind.FOUND,
              one.costs().stream()
                  .map(cost -> new Curve.Point(cost.size(), cost.ms()))
                  .toList()));
    }
    double deadlineMs = Ladder.DEADLINE.toMillis();
    curves.add(
        Curve.level("deadline, 10 s", Curve.Kind.LIMIT, x.from(), x.to(), deadlineMs));
    TableColumns columns =
        new TableColumns(
            x.ticks().stream().filter(tick -> !tick.text().isEmpty()).toList(),
            ms -> new WrittenFigure(null, Double.toString(ms)));
    return new Plot("growth-" + unit, title, title + ", ms of a processor", x, y, curves, null, columns);
  }

  private static List<Double> sizes(List<Measured> of) {
    return of.stream().flatMap(one -> one.costs().stream()).map(cost -> (double) cost.size()).toList();
  }

  private static List<Double> times(List<Measured> of) {
    List<Double> times =
        new ArrayList<>(of.stream().flatMap(one -> one.costs().stream()).map(c -> c.ms()).toList());
    // Above the deadline too there is room.
    times.add(2.0 * Ladder.DEADLINE.toMillis());
    return times;
  }

  /** A logarithmic axis of whole decades around some values. */
  private static Axis decades(String label, List<Double> values) {
    double low = values.stream().mapToDouble(v -> v).min().orElse(1);
    double high = values.stream().mapToDouble(v -> v).max().orElse(10);
    int first = (int) Math.floor(Math.log10(low));
    int last = Math.max(first + 1, (int) Math.ceil(Math.log10(high) - 1e-9));
    List<Tick> ticks = new ArrayList<>();
    for (int decade = first; decade <= last; decade++) {
      ticks.add(new Tick(Math.pow(10, decade), text(decade)));
    }
    return new Axis(label, Math.pow(10, first), Math.pow(10, last), true, ticks);
  }

  private static String text(int decade) {
    double value = Math.pow(10, decade);
    if (decade < 0) {
      return "0." + "0".repeat(-decade - 1) + "1";
    }
    return decade < 3
        ? Math.round(value) + ""
        : decade < 6 ? Math.round(value / 1e3) + " k" : Math.round(value / 1e6) + " M";
  }
}
