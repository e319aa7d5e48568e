package org.footwell.vehicle.curves;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Objects;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;
import org.footwell.plot.Axis;
import org.footwell.plot.Curve;
import org.footwell.plot.Plot;
import org.footwell.plot.PlotSheet;
import org.footwell.vehicle.curves.PlanCurvesResult.ChannelCurve;
import org.footwell.vehicle.curves.PlanCurvesResult.DriverCurve;

/** The plots of a plan, in the language of a reader. */
public final class CurvePlots {

  /** Quieter than this against the loudest place is not looked at, dB. */
  private static final double DEEPEST_DB = 50;

  /** More ohm, more headroom in dB, or more of the travel in percent than this is far from any limit. */
  private static final double HIGHEST_OHM = 40;

  private static final double MOST_HEADROOM_DB = 40;
  private static final double WHOLE_TRAVEL = 100;

  private final PlanCurvesResult curves;
  private final Reader reader;

  private CurvePlots(PlanCurvesResult curves, Reader reader) {
    this.curves = curves;
    this.reader = reader;
  }

  /** All of them one below the other; what is not known is left out. */
  static byte[] all(PlanCurvesResult curves, Reader reader) {
    return PlotSheet.svg(of(curves, reader)).getBytes(StandardCharsets.UTF_8);
  }

  /** Each of them: response, impedance, movement and headroom, as far as they are known. */
  public static List<Plot> of(PlanCurvesResult curves, Reader reader) {
    CurvePlots plots = new CurvePlots(curves, reader);
    List<Plot> all = new ArrayList<>();
    if (curves.seats() != null) {
      all.add(plots.response());
    }
    all.add(plots.impedance());
    if (!curves.drivers().isEmpty()) {
      all.add(plots.movement());
    }
    all.add(plots.headroom());
    return all;
  }

  private Plot response() {
    List<Curve> drawn = new ArrayList<>();
    curves.seats().stream()
        .filter(seat -> seat.name().equals(curves.mainSeat()))
        .forEach(seat -> drawn.add(found(text(CurveWords.TOGETHER), seat.levelDbSpl())));
    for (ChannelCurve channel : curves.channels()) {
      drawn.add(found(channel.id(), channel.levelDbSpl()));
    }
    drawn.add(
        Curve.of(
            text(CurveWords.WANTED),
            Curve.Kind.WANTED,
            curves.frequenciesHz(),
            curves.targetDbSpl()));
    double highest = range(drawn).getMax();
    return plot(
        "response", CurveWords.RESPONSE, CurveWords.LEVEL, highest - DEEPEST_DB, highest, drawn);
  }

  private Plot impedance() {
    List<Curve> drawn = new ArrayList<>();
    for (ChannelCurve channel : curves.channels()) {
      drawn.add(found(channel.id(), channel.impedanceOhm()));
    }
    double highest = Math.min(HIGHEST_OHM, range(drawn).getMax());
    curves.channels().stream()
        .map(ChannelCurve::minimumOhm)
        .filter(Objects::nonNull)
        .distinct()
        .sorted()
        .forEach(
            ohm ->
                drawn.add(
                    limit(
                        Phrase.of(CurveWords.SMALLEST_LOAD)
                            .with("value", ohm)
                            .said(reader.language()),
                        ohm)));
    return plot("impedance", CurveWords.IMPEDANCE, CurveWords.OHM, 0, highest, drawn);
  }

  /** Cones of every size beside each other: as parts of their travel. */
  private Plot movement() {
    List<Curve> drawn = new ArrayList<>();
    for (DriverCurve driver : curves.drivers()) {
      if (driver.xmaxMm() != null) {
        drawn.add(
            found(
                driver.id(),
                driver.displacementMm().stream()
                    .map(mm -> WHOLE_TRAVEL * mm / driver.xmaxMm())
                    .toList()));
      }
    }
    drawn.add(limit(text(CurveWords.TRAVEL), WHOLE_TRAVEL));
    double highest = Math.min(2 * WHOLE_TRAVEL, range(drawn).getMax());
    return plot("movement", CurveWords.MOVEMENT, CurveWords.PART_OF_TRAVEL, 0, highest, drawn);
  }

  private Plot headroom() {
    List<Curve> drawn = new ArrayList<>();
    for (ChannelCurve channel : curves.channels()) {
      drawn.add(found(channel.id(), channel.headroomDb()));
    }
    drawn.add(limit(text(CurveWords.NOTHING_LEFT), 0));
    DoubleSummaryStatistics range = range(drawn);
    return plot(
        "headroom",
        CurveWords.HEADROOM,
        CurveWords.DRIVE_LEFT,
        Math.max(-MOST_HEADROOM_DB, range.getMin()),
        Math.min(MOST_HEADROOM_DB, range.getMax()),
        drawn);
  }

  private Plot plot(
      String id, CurveWords title, CurveWords y, double low, double high, List<Curve> drawn) {
    return new Plot(
        id,
        text(title),
        Axis.ofFrequency(text(CurveWords.FREQUENCY), 20, 20_000),
        Axis.around(text(y), low, high),
        drawn);
  }

  private Curve found(String name, List<Double> values) {
    return Curve.of(name, Curve.Kind.FOUND, curves.frequenciesHz(), values);
  }

  private static Curve limit(String name, double value) {
    return Curve.level(name, Curve.Kind.LIMIT, 20, 20_000, value);
  }

  private static DoubleSummaryStatistics range(List<Curve> drawn) {
    return drawn.stream()
        .flatMap(curve -> curve.points().stream())
        .mapToDouble(Curve.Point::y)
        .filter(Double::isFinite)
        .summaryStatistics();
  }

  private String text(CurveWords words) {
    return Texts.of(words, reader.language());
  }
}
