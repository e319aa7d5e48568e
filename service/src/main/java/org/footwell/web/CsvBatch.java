package org.footwell.web;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.footwell.calculation.Answer;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Names;
import org.footwell.calculation.Shape;

/**
 * A batch in CSV. Columns are dotted field names; others pass through. The result's single figures
 * are appended, then verdict, findings and error.
 */
final class CsvBatch<R extends Record> implements AutoCloseable {

  private final Endpoint<?, R> endpoint;
  private final CloseableIterator<CsvRecord> rows;
  private final char separator;
  private final List<String> header;

  /** For each column the path of the field it fills, or null where it passes through. */
  private final List<String[]> paths = new ArrayList<>();

  private final List<String> resultPaths;

  /** Where they stand in a result, made once and not for every row. */
  private final List<JsonPointer> resultPointers;

  private CsvBatch(Endpoint<?, R> endpoint, CloseableIterator<CsvRecord> rows, char separator) {
    this.endpoint = endpoint;
    this.rows = rows;
    this.separator = separator;
    this.resultPaths =
        endpoint.result().columns().stream()
            .map(Shape.Column::path)
            .filter(path -> !path.contains("*"))
            .toList();
    this.resultPointers =
        resultPaths.stream()
            .map(path -> JsonPointer.compile("/" + path.replace('.', '/')))
            .toList();
    if (!rows.hasNext()) {
      throw ProblemException.of(ProblemType.UNREADABLE, "The CSV has no header line.");
    }
    this.header = rows.next().getFields();
    readHeader();
  }

  /**
   * Reads the header.
   *
   * @throws ProblemException with every fault of the header
   */
  static <R extends Record> CsvBatch<R> open(
      Endpoint<?, R> endpoint, InputStream in, char separator) throws IOException {
    return new CsvBatch<>(
        endpoint,
        CsvReader.builder()
            .fieldSeparator(separator)
            .skipEmptyLines(true)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .detectBomHeader(true)
            .ofCsvRecord(in, StandardCharsets.UTF_8)
            .iterator(),
        separator);
  }

  private void readHeader() {
    Faults faults = new Faults();
    Set<String> known =
        endpoint.request().columns().stream().map(Shape.Column::path).collect(Collectors.toSet());
    Set<String> seen = new HashSet<>();
    for (String column : header) {
      String template = column.replaceAll("\\.\\d+", ".*");
      if (!seen.add(column)) {
        faults.add(CoreFault.DUPLICATE).at("/" + column).given(column);
      } else if (known.contains(template)) {
        paths.add(column.split("\\.", -1));
        continue;
      }
      misspelt(column, template, known, faults);
      paths.add(null);
    }
    for (String column : resultColumns()) {
      if (seen.contains(column)) {
        faults.add(CoreFault.DUPLICATE).at("/" + column).given(column);
      }
    }
    if (header.size() == 1 && header.get(0).contains(";") && separator == ',') {
      throw ProblemException.of(
          ProblemType.UNREADABLE, "The header holds semicolons; add separator=semicolon.");
    }
    for (Shape.Column column : endpoint.request().columns()) {
      boolean single = !column.path().contains(".");
      if (single && column.required() && !seen.contains(column.path())) {
        faults.add(CoreFault.REQUIRED).at("/" + column.path()).allowed("a column of this name");
      }
    }
    if (!faults.none()) {
      throw ProblemException.invalid(faults.list());
    }
  }

  private List<String> resultColumns() {
    List<String> names = new ArrayList<>(resultPaths);
    names.addAll(List.of("verdict", "findings", "error"));
    return names;
  }

  /** A column that is nearly the name of a field is refused: passing it through would hide it. */
  private static void misspelt(String column, String template, Set<String> known, Faults faults) {
    Names.nearest(template, known)
        .filter(near -> !near.equals(template))
        .ifPresent(
            near ->
                faults
                    .add(CoreFault.UNKNOWN_FIELD)
                    .at("/" + column)
                    .given(column)
                    .with("nearest", " Did you mean " + near + "?"));
  }

  /** Answers every row. */
  void run(FlushingOutput out) throws IOException {
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    CsvWriter csv =
        CsvWriter.builder().fieldSeparator(separator).lineDelimiter(LineDelimiter.LF).build(writer);
    List<String> names = new ArrayList<>(header);
    names.addAll(resultColumns());
    csv.writeRecord(names);
    long nextLine = 2;
    try {
      while (rows.hasNext()) {
        CsvRecord row = rows.next();
        nextLine = row.getStartingLineNumber() + 1;
        csv.writeRecord(answered(row));
        out.rowDone(csv);
      }
    } catch (CsvParseException malformed) {
      csv.writeRecord(brokenOff(nextLine));
    }
    csv.flush();
  }

  /** The last row of a CSV that cannot be read further: only its error is filled in. */
  private List<String> brokenOff(long line) {
    List<String> cells = new ArrayList<>();
    fillUpToError(cells);
    cells.add(
        "line "
            + line
            + ": the CSV cannot be read from here on; a cell is too large or goes on"
            + " after its closing quote.");
    return cells;
  }

  private void fillUpToError(List<String> cells) {
    while (cells.size() < header.size() + resultPaths.size() + 2) {
      cells.add("");
    }
  }

  private List<String> answered(CsvRecord row) {
    List<String> cells = new ArrayList<>(row.getFields());
    try {
      if (cells.size() != header.size()) {
        throw ProblemException.of(
            ProblemType.UNREADABLE,
            "The row has " + cells.size() + " cells, the header " + header.size() + ".");
      }
      Answer<R> answer = endpoint.answerCells(tree(row), false);
      JsonNode result = Rendering.tree(answer).get("result");
      for (JsonPointer pointer : resultPointers) {
        cells.add(Rendering.cell(result.at(pointer)));
      }
      cells.add(answer.verdict().name().toLowerCase(Locale.ROOT));
      cells.add(answer.findings().stream().map(Finding::code).collect(Collectors.joining(" ")));
      cells.add("");
    } catch (RuntimeException failure) {
      fillUpToError(cells);
      cells.add(error(failure, row.getStartingLineNumber()));
    }
    return cells;
  }

  private Map<String, Object> tree(CsvRecord row) {
    Map<String, Object> tree = new LinkedHashMap<>();
    for (int i = 0; i < paths.size(); i++) {
      String cell = row.getField(i);
      if (paths.get(i) != null && !cell.isEmpty()) {
        Query.put(tree, paths.get(i), cell);
      }
    }
    return tree;
  }

  private static String error(RuntimeException failure, long line) {
    return "line " + line + ": " + Problems.of(failure, null).sentence();
  }

  @Override
  public void close() throws IOException {
    rows.close();
  }
}
