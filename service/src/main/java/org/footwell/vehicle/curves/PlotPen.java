package org.footwell.vehicle.curves;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;
import org.footwell.calculation.text.Words;
import org.footwell.physics.ThirdOctaves;
import org.footwell.plot.Axis;
import org.footwell.plot.Curve;
import org.footwell.plot.Plot;
import org.footwell.plot.Strips;
import org.footwell.plot.TableColumns;
import org.footwell.sheet.FigureWriter;
import org.footwell.sheet.WrittenFigure;

/** Draws curves over the frequencies of a plan, in the language and the units of a reader. */
final class PlotPen {

  private static final double FROM_HZ = 20;
  private static final double TO_HZ = 20_000;

  /** The table beside a plot has every third third octave from here to there, Hz. */
  private static final double FIRST_READ_HZ = 31.5;

  private static final double LAST_READ_HZ = 16_000;
  private static final int BANDS_IN_AN_OCTAVE = 3;

  private final Reader reader;
  private final FigureWriter figures;
  private final List<Double> frequenciesHz;

  PlotPen(List<Double> frequenciesHz, Reader reader) {
    this.reader = reader;
    this.frequenciesHz = frequenciesHz;
    figures = new FigureWriter(reader);
  }

  /** Something that has a value at each frequency. */
  record Named(String name, List<Double> values) {}

  String text(Words words) {
    return Texts.of(words, reader.language());
  }

  String text(Phrase phrase) {
    return phrase.said(reader);
  }

  FigureWriter figures() {
    return figures;
  }

  /** A value without its unit, which stands above. */
  DoubleFunction<WrittenFigure> bare(Measure measure) {
    return value ->
        Double.isFinite(value)
            ? new WrittenFigure(value, figures.bare(measure, value))
            : figures.of(measure, null);
  }

  List<Curve> found(List<Named> all) {
    return new ArrayList<>(all.stream().map(this::found).toList());
  }

  Curve found(Named one) {
    return curve(one, Curve.Kind.FOUND);
  }

  Curve wanted(Named one) {
    return curve(one, Curve.Kind.WANTED);
  }

  private Curve curve(Named one, Curve.Kind kind) {
    return Curve.of(one.name(), kind, frequenciesHz, one.values());
  }

  static Curve limit(String name, double value) {
    return Curve.level(name, Curve.Kind.LIMIT, FROM_HZ, TO_HZ, value);
  }

  static DoubleSummaryStatistics range(List<Curve> drawn) {
    return drawn.stream()
        .flatMap(curve -> curve.points().stream())
        .mapToDouble(Curve.Point::y)
        .filter(Double::isFinite)
        .summaryStatistics();
  }

  /**
   * What a plot is called and how its values are read.
   *
   * @param y label of its values, with their unit
   * @param measure that unit, which is the same for all readers
   */
  record Legend(String id, String title, CurveWords shows, CurveWords y, Measure measure) {}

  Plot plot(Legend legend, double low, double high, List<Curve> drawn, Strips strips) {
    return new Plot(
        legend.id(),
        legend.title(),
        text(legend.shows()),
        Axis.ofFrequency(text(CurveWords.FREQUENCY), FROM_HZ, TO_HZ),
        Axis.around(text(legend.y()), figures, low, high),
        drawn,
        strips,
        new TableColumns(octaves(), bare(legend.measure())));
  }

  private List<Axis.Tick> octaves() {
    double[] bands = ThirdOctaves.between(FIRST_READ_HZ, LAST_READ_HZ).toArray();
    return IntStream.range(0, bands.length)
        .filter(b -> b % BANDS_IN_AN_OCTAVE == 0)
        .mapToObj(
            b ->
                new Axis.Tick(bands[b], figures.bare(Measure.HZ, ThirdOctaves.nominalHz(bands[b]))))
        .toList();
  }
}
