package org.footwell.web.batch;

import java.util.List;
import java.util.stream.Stream;
import org.footwell.analysis.Point;
import org.footwell.analysis.Sweep;
import org.footwell.calculation.Place;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Problem;
import org.footwell.web.request.WebWords;

/**
 * The table of a sweep in CSV: inputs, outputs, then verdict, findings and error. A figure of the
 * result that is called like an input has {@code result.} before its name.
 */
final class SweepCsv implements SweepForm {

  private static final List<String> LAST = List.of("verdict", "findings", "error");

  private final Sweep<?, ?> sweep;
  private final CsvTexts texts;
  private final Reader reader;

  /** Error cells: they are written when it is their turn. */
  private final CsvText errors;

  SweepCsv(Sweep<?, ?> sweep, CsvForm form, Reader reader) {
    this.sweep = sweep;
    this.texts = new CsvTexts(form);
    this.reader = reader;
    this.errors = texts.borrow();
  }

  @Override
  public byte[] head() {
    List<String> inputs = sweep.inputs().stream().map(Place::path).toList();
    Stream<String> outputs =
        sweep.outputs().stream()
            .map(Place::path)
            .map(path -> inputs.contains(path) || LAST.contains(path) ? "result." + path : path);
    CsvText text = texts.borrow();
    text.row(Stream.of(inputs.stream(), outputs, LAST.stream()).flatMap(some -> some).toList());
    return text.take();
  }

  @Override
  public List<Part> row(long number, List<Object> inputs, Point point) {
    CsvText text = texts.borrow();
    inputs.forEach(text::value);
    point.outputs().forEach(text::value);
    text.value(point.verdict());
    text.words(point.codes());
    text.blanks(1);
    text.endRow();
    return List.of(texts.taken(text));
  }

  @Override
  public List<Part> row(long number, List<Object> inputs, Problem problem) {
    CsvText text = texts.borrow();
    inputs.forEach(text::value);
    text.blanks(sweep.outputs().size() + LAST.size() - 1);
    return List.of(texts.taken(text), before -> error(before.next(problem)));
  }

  private byte[] error(Problem problem) {
    errors.cell(
        Phrase.of(WebWords.AT_LINE)
            .with("line", problem.line())
            .own("sentence", problem.sentence())
            .said(reader));
    errors.endRow();
    return errors.take();
  }

  @Override
  public byte[] tail() {
    return new byte[0];
  }
}
