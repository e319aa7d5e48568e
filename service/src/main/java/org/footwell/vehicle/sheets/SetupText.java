package org.footwell.vehicle.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;
import org.footwell.calculation.text.Words;
import org.footwell.parts.Filter;
import org.footwell.parts.plan.ParametricFilter;
import org.footwell.sheet.FigureWriter;
import org.footwell.sheet.WrittenFigure;
import org.footwell.vehicle.PlanReviewResult.SetupLine;

/** What stands in the rows of the setup sheet, for a reader. */
final class SetupText {

  private final Reader reader;
  private final FigureWriter figures;

  SetupText(Reader reader) {
    this.reader = reader;
    figures = new FigureWriter(reader);
  }

  String title(SetupEntry entry) {
    return Texts.of(entry, reader.language());
  }

  /** An entry of a channel; null where there is none. */
  WrittenFigure figure(SetupEntry entry, SetupLine line) {
    Object value = entry.of(line);
    if (value instanceof Double number) {
      Measure measure = entry.measure();
      return measure == null ? figures.number(rounded(number)) : figures.of(measure, number);
    }
    return value == null
        ? null
        : new WrittenFigure(value instanceof Number count ? count : null, text(value));
  }

  /** Delays are set in whole samples, or in tenths of one. */
  private static BigDecimal rounded(double samples) {
    return BigDecimal.valueOf(samples).setScale(1, RoundingMode.HALF_UP);
  }

  private String text(Object value) {
    if (value instanceof List<?> list) {
      String between = list.get(0) instanceof String ? " + " : "; ";
      return list.stream().map(this::text).collect(Collectors.joining(between));
    }
    if (value instanceof Filter filter) {
      return filter(filter);
    }
    if (value instanceof ParametricFilter filter) {
      return filter(filter);
    }
    return value instanceof Words words ? Texts.of(words, reader.language()) : value.toString();
  }

  /** A filter as a fitter says it. */
  String filter(Filter filter) {
    return Phrase.of(SetupWords.FILTER)
        .own("kind", Texts.of(filter.kind(), reader.language()))
        .own("frequency", figures.of(Measure.HZ, filter.frequencyHz()).text())
        .with("slope", 6L * filter.order())
        .said(reader);
  }

  private String filter(ParametricFilter filter) {
    String text =
        Texts.of(filter.kind(), reader.language())
            + " "
            + figures.of(Measure.HZ, filter.frequencyHz()).text();
    if (filter.q() != null) {
      text += ", Q " + figures.number(filter.q()).text();
    }
    return filter.gainDb() == null
        ? text
        : text + ", " + figures.change(Measure.DB, filter.gainDb()).text();
  }
}
