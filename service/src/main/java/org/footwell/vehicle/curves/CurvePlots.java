package org.footwell.vehicle.curves;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.footwell.calculation.Shown;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.plot.Curve;
import org.footwell.plot.Drawing;
import org.footwell.plot.Plot;
import org.footwell.plot.PlotSheet;
import org.footwell.plot.Strips;
import org.footwell.vehicle.chain.Limit;
import org.footwell.vehicle.curves.PlanCurvesResult.ChannelCurve;
import org.footwell.vehicle.curves.PlanCurvesResult.DriverCurve;
import org.footwell.vehicle.curves.PlanCurvesResult.ReplacementCurve;
import org.footwell.vehicle.curves.PlotPen.Legend;
import org.footwell.vehicle.curves.PlotPen.Named;

/** The plots of a plan, in the language of a reader. What is not known is left out. */
public final class CurvePlots {

  /** Quieter than this against the loudest place is not looked at, dB. */
  private static final double DEEPEST_DB = 50;

  /** The same of one driver alone, dB. */
  private static final double DEEPEST_ALONE_DB = 40;

  /** More ohm, more headroom in dB, or more of the travel in percent than this is far from any limit. */
  private static final double HIGHEST_OHM = 40;

  private static final double MOST_HEADROOM_DB = 40;
  private static final double WHOLE_TRAVEL = 100;

  /** So much the axis goes beyond a limit, so that the line of it is seen whole. */
  private static final double ROOM_PERCENT = 5;

  private static final double ROOM_DB = 1;

  private final VehiclePlan plan;
  private final PlanCurvesResult curves;
  private final PlotPen pen;

  private CurvePlots(VehiclePlan plan, PlanCurvesResult curves, Reader reader) {
    this.plan = plan;
    this.curves = curves;
    pen = new PlotPen(curves.frequenciesHz(), reader);
  }

  /** All of them one below the other. */
  static byte[] sheet(Shown<VehiclePlan, PlanCurvesResult> shown) {
    List<Drawing> all = of(shown.request(), shown.answer().result(), shown.reader());
    return PlotSheet.svg(all).getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Each of them: response, each seat, impedance, movement, headroom, before against after, supply and the
   * cabin, as far as they are known.
   */
  public static List<Drawing> of(VehiclePlan plan, PlanCurvesResult curves, Reader reader) {
    CurvePlots plots = new CurvePlots(plan, curves, reader);
    List<Drawing> all = new ArrayList<>();
    if (curves.seats() != null) {
      all.add(plots.response());
      if (curves.seats().size() > 1) {
        all.add(plots.seats());
      }
    }
    all.add(plots.impedance());
    if (curves.drivers().stream().anyMatch(driver -> driver.xmaxMm() != null)) {
      all.add(plots.movement());
    }
    all.add(plots.headroom());
    all.addAll(beforeAgainstAfter(plan, curves, reader));
    all.addAll(SupplyPlot.of(plan, curves.supply(), reader).stream().toList());
    all.add(CabinPicture.of(plan, curves, reader));
    return all;
  }

  /** What replaces factory parts against what it replaces: one plot for places that change alike. */
  public static List<Plot> beforeAgainstAfter(
      VehiclePlan plan, PlanCurvesResult curves, Reader reader) {
    if (curves.replacements() == null) {
      return List.of();
    }
    Map<List<Object>, List<ReplacementCurve>> alike = new LinkedHashMap<>();
    for (ReplacementCurve one : curves.replacements()) {
      List<Object> key =
          List.of(one.factoryPart(), one.newPart(), one.beforeDbSpl(), one.afterDbSpl());
      alike.computeIfAbsent(key, any -> new ArrayList<>()).add(one);
    }
    CurvePlots plots = new CurvePlots(plan, curves, reader);
    return alike.values().stream().map(plots::replacement).toList();
  }

  private Plot response() {
    List<Named> found = new ArrayList<>();
    curves.seats().stream()
        .filter(seat -> seat.name().equals(curves.mainSeat()))
        .forEach(seat -> found.add(new Named(pen.text(CurveWords.TOGETHER), seat.levelDbSpl())));
    for (ChannelCurve channel : curves.channels()) {
      found.add(new Named(Names.spelt(channel.id()), channel.levelDbSpl()));
    }
    return levels("response", CurveWords.RESPONSE, CurveWords.RESPONSE_SHOWS, pen.found(found));
  }

  private Plot seats() {
    List<Named> found =
        curves.seats().stream().map(seat -> new Named(seat.name(), seat.levelDbSpl())).toList();
    return levels("seats", CurveWords.SEATS, CurveWords.SEATS_SHOWS, pen.found(found));
  }

  /** With the wanted curve. */
  private Plot levels(String id, CurveWords title, CurveWords shows, List<Curve> found) {
    List<Curve> drawn = new ArrayList<>(found);
    drawn.add(pen.wanted(new Named(pen.text(CurveWords.WANTED), curves.targetDbSpl())));
    double highest = PlotPen.range(drawn).getMax();
    Legend legend = new Legend(id, pen.text(title), shows, CurveWords.LEVEL, Measure.DB_SPL);
    return pen.plot(legend, highest - DEEPEST_DB, highest, drawn, null);
  }

  private Plot impedance() {
    List<Curve> drawn =
        pen.found(
            curves.channels().stream()
                .map(one -> new Named(Names.spelt(one.id()), one.impedanceOhm()))
                .toList());
    double highest = Math.min(HIGHEST_OHM, PlotPen.range(drawn).getMax());
    curves.channels().stream()
        .map(ChannelCurve::minimumOhm)
        .filter(Objects::nonNull)
        .distinct()
        .sorted()
        .forEach(ohm -> drawn.add(PlotPen.limit(smallestLoad(ohm), ohm)));
    Legend legend =
        new Legend(
            "impedance",
            pen.text(CurveWords.IMPEDANCE),
            CurveWords.IMPEDANCE_SHOWS,
            CurveWords.OHM,
            Measure.OHM);
    return pen.plot(legend, 0, highest, drawn, null);
  }

  private String smallestLoad(double ohm) {
    return pen.text(Phrase.of(CurveWords.SMALLEST_LOAD).with("value", ohm));
  }

  /** Cones of every size beside each other: as parts of their travel. */
  private Plot movement() {
    List<Named> found = new ArrayList<>();
    for (DriverCurve driver : curves.drivers()) {
      if (driver.xmaxMm() != null) {
        List<Double> parts =
            driver.displacementMm().stream()
                .map(mm -> WHOLE_TRAVEL * mm / driver.xmaxMm())
                .toList();
        found.add(new Named(Names.spelt(driver.id()), parts));
      }
    }
    List<Curve> drawn = pen.found(found);
    drawn.add(PlotPen.limit(pen.text(CurveWords.TRAVEL), WHOLE_TRAVEL));
    double highest = Math.min(2 * WHOLE_TRAVEL, PlotPen.range(drawn).getMax() + ROOM_PERCENT);
    Legend legend =
        new Legend(
            "movement",
            pen.text(CurveWords.MOVEMENT),
            CurveWords.MOVEMENT_SHOWS,
            CurveWords.PART_OF_TRAVEL,
            Measure.PERCENT);
    return pen.plot(legend, 0, highest, drawn, null);
  }

  private Plot headroom() {
    List<Curve> drawn =
        pen.found(
            curves.channels().stream()
                .map(one -> new Named(Names.spelt(one.id()), one.headroomDb()))
                .toList());
    drawn.add(PlotPen.limit(pen.text(CurveWords.NOTHING_LEFT), 0));
    DoubleSummaryStatistics range = PlotPen.range(drawn);
    Legend legend =
        new Legend(
            "headroom",
            pen.text(CurveWords.HEADROOM),
            CurveWords.HEADROOM_SHOWS,
            CurveWords.DRIVE_LEFT,
            Measure.DB);
    return pen.plot(
        legend,
        Math.max(-MOST_HEADROOM_DB, range.getMin() - ROOM_DB),
        Math.min(MOST_HEADROOM_DB, range.getMax()),
        drawn,
        endedBy());
  }

  /** What ends each channel, stretch by stretch; channels that it ends alike are one strip. */
  private Strips endedBy() {
    Map<List<Limit>, List<String>> alike = new LinkedHashMap<>();
    for (ChannelCurve channel : curves.channels()) {
      alike
          .computeIfAbsent(channel.heldBy(), any -> new ArrayList<>())
          .add(Names.spelt(channel.id()));
    }
    return new Strips(
        pen.text(CurveWords.ENDED_BY),
        Arrays.stream(Limit.values())
            .filter(limit -> alike.keySet().stream().anyMatch(held -> held.contains(limit)))
            .map(this::mark)
            .toList(),
        alike.entrySet().stream()
            .map(
                one ->
                    new Strips.Strip(
                        String.join(", ", one.getValue()),
                        curves.frequenciesHz(),
                        one.getKey().stream().map(this::mark).toList()))
            .toList());
  }

  private Strips.Mark mark(Limit limit) {
    CurveWords letter =
        switch (limit) {
          case FULL_SCALE -> CurveWords.LETTER_FULL_SCALE;
          case CLIPPING -> CurveWords.LETTER_CLIPPING;
          case HEAT -> CurveWords.LETTER_HEAT;
          case MOVEMENT -> CurveWords.LETTER_MOVEMENT;
        };
    return new Strips.Mark(pen.text(letter), pen.text(limit));
  }

  private Plot replacement(List<ReplacementCurve> places) {
    ReplacementCurve first = places.get(0);
    List<String> names = places.stream().map(one -> Names.spelt(one.driver())).toList();
    List<Curve> drawn =
        List.of(
            pen.found(
                new Named(
                    called(CurveWords.AFTER, plan.newPart(first.newPart())), first.afterDbSpl())),
            pen.found(
                new Named(
                    called(CurveWords.BEFORE, plan.factoryPart(first.factoryPart())),
                    first.beforeDbSpl())));
    double highest = PlotPen.range(drawn).getMax();
    Legend legend =
        new Legend(
            "before-after-" + (curves.replacements().indexOf(first) + 1),
            pen.text(Phrase.of(CurveWords.REPLACEMENT).own("places", names)),
            CurveWords.REPLACEMENT_SHOWS,
            CurveWords.LEVEL_OF_ONE,
            Measure.DB_SPL);
    return pen.plot(legend, highest - DEEPEST_ALONE_DB, highest, drawn, null);
  }

  private String called(CurveWords words, PlannedPart part) {
    return pen.text(Phrase.of(words).own("part", part.calledName()));
  }
}
