package org.footwell.web.batch;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.footwell.calculation.Brief;
import org.footwell.calculation.Row;
import org.footwell.calculation.RowReader;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Problem;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;
import org.footwell.web.request.Problems;
import org.footwell.web.request.Query;
import org.footwell.web.request.WebWords;

/**
 * A batch in CSV. Columns are dotted field names; others pass through. The result's single figures
 * are appended, then verdict, findings and error.
 */
final class CsvBatch<Q extends Record, R extends Record> implements AutoCloseable {

  /** Rows that are answered together at most, and characters that are enough for that. */
  private static final int MOST_ROWS = 128;

  private static final int MOST_CHARACTERS = 64 * 1024;

  private final Endpoint<Q, R> endpoint;
  private final AnnouncedInput input;
  private final CsvRows rows;
  private final CsvHeader header;
  private final RowReader<Q> columns;
  private final Reader reader;

  private final CsvTexts texts;

  /** Error cells: they are written when it is their turn. */
  private final CsvText errors;

  private final PieceSize size = new PieceSize(MOST_ROWS);
  private List<CsvRow> piece = new ArrayList<>(MOST_ROWS);
  private int characters;

  /**
   * Reads the header.
   *
   * @param rowCharacters characters a row may have
   * @throws ProblemException with every fault of the header
   */
  CsvBatch(
      Endpoint<Q, R> endpoint, AnnouncedInput input, int rowCharacters, CsvForm form, Reader reader)
      throws IOException {
    this.endpoint = endpoint;
    this.input = input;
    this.texts = new CsvTexts(form);
    this.errors = texts.borrow();
    this.rows = new CsvRows(input, form.separator(), rowCharacters);
    this.header = new CsvHeader(names(), form, endpoint);
    this.columns = endpoint.request().rows(header.paths());
    this.reader = reader;
  }

  private List<String> names() {
    try {
      CsvRow first = rows.next();
      if (first == null) {
        throw ProblemException.of(ProblemType.UNREADABLE, ProblemWords.NO_HEADER);
      }
      List<String> names = first.cells().texts();
      if (names.stream().anyMatch(CsvText::isGarbled)) {
        throw ProblemException.of(ProblemType.UNREADABLE, ProblemWords.HEADER_GARBLED);
      }
      return names;
    } catch (CsvRows.Broken broken) {
      throw ProblemException.of(ProblemType.UNREADABLE, broken.in(ProblemWords.HEADER_BROKEN));
    }
  }

  /** Answers every row. */
  void answer(Pipeline pipeline) throws IOException {
    pipeline.add(() -> written(text -> text.row(header.answered())));
    input.beforeWaiting(
        () -> {
          endPiece(pipeline);
          pipeline.flush();
        });
    try {
      for (CsvRow row = rows.next(); row != null; row = rows.next()) {
        add(row, pipeline);
      }
      endPiece(pipeline);
    } catch (CsvRows.Broken broken) {
      brokenOff(broken, pipeline);
    } catch (ProblemException broken) {
      brokenOff(rows.brokenOff(broken.detail()), pipeline);
    }
    pipeline.flush();
  }

  private void brokenOff(CsvRows.Broken broken, Pipeline pipeline) throws IOException {
    endPiece(pipeline);
    pipeline.add(() -> written(text -> brokenOff(broken, text)));
  }

  private void add(CsvRow row, Pipeline pipeline) throws IOException {
    piece.add(row);
    characters += row.cells().characterCount();
    if (piece.size() >= size.rows() || characters >= MOST_CHARACTERS) {
      endPiece(pipeline);
    }
  }

  private void endPiece(Pipeline pipeline) throws IOException {
    if (!piece.isEmpty()) {
      List<CsvRow> whole = piece;
      piece = new ArrayList<>(MOST_ROWS);
      characters = 0;
      pipeline.add(size.timed(whole.size(), () -> answered(whole)));
    }
  }

  private List<Part> written(Consumer<CsvText> row) {
    CsvText text = texts.borrow();
    row.accept(text);
    return List.of(texts.taken(text));
  }

  private List<Part> answered(List<CsvRow> whole) {
    List<Part> parts = new ArrayList<>();
    CsvText text = texts.borrow();
    for (CsvRow row : whole) {
      text.cells(row, header.size());
      int place = text.place();
      try {
        answer(row.cells(), text);
        text.endRow();
      } catch (RuntimeException failure) {
        text.backTo(place);
        text.blanks(header.appendedCount() - 1);
        parts.add(Part.of(text.take()));
        Problem problem = Problems.of(failure, null, reader).atLine(row.line());
        parts.add(before -> error(before.next(problem)));
      }
    }
    parts.add(texts.taken(text));
    return parts;
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

  private void answer(Row cells, CsvText text) {
    if (cells.size() != header.size()) {
      throw ProblemException.of(
          ProblemType.UNREADABLE,
          Phrase.of(ProblemWords.ROW_OF_OTHER_LENGTH)
              .with(
                  "cells",
                  cells.size() == 1
                      ? Phrase.of(ProblemWords.ONE_CELL)
                      : Phrase.of(ProblemWords.CELLS).with("count", cells.size()))
              .with("header", header.size()));
    }
    if (text.isRowGarbled()) {
      throw ProblemException.of(ProblemType.UNREADABLE, ProblemWords.ROW_GARBLED);
    }
    Q request = columns.read(cells);
    Brief answer = endpoint.brief(request == null ? endpoint.bind(tree(cells)) : request);
    for (int value : header.wanted()) {
      text.value(answer.values().get(value));
    }
    text.value(answer.verdict());
    text.words(answer.codes());
    text.blanks(1);
  }

  /** The last row of a CSV that cannot be read further: only its error is filled in. */
  private void brokenOff(CsvRows.Broken broken, CsvText text) {
    text.blanks(header.size() + header.appendedCount() - 1);
    text.value(broken.in(ProblemWords.ROW_BROKEN).said(reader));
    text.endRow();
  }

  private Map<String, Object> tree(Row cells) {
    Map<String, Object> tree = new LinkedHashMap<>();
    List<List<String>> paths = header.paths();
    for (int i = 0; i < paths.size(); i++) {
      String cell = cells.text(i);
      if (paths.get(i) != null && !cell.isEmpty()) {
        Query.put(tree, paths.get(i), cell);
      }
    }
    return tree;
  }

  @Override
  public void close() throws IOException {
    rows.close();
  }
}
