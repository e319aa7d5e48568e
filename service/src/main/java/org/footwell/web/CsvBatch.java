package org.footwell.web;

import com.fasterxml.jackson.core.io.NumberOutput;
import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.calculation.Brief;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Names;
import org.footwell.calculation.RowReader;
import org.footwell.calculation.RowValues;
import org.footwell.calculation.Shape;

/**
 * A batch in CSV. Columns are dotted field names; others pass through. The result's single figures
 * are appended, then verdict, findings and error.
 */
final class CsvBatch<Q extends Record, R extends Record> implements AutoCloseable {

  /** Rows that are answered together, and characters that are enough for that. */
  private static final int PIECE_ROWS = 128;

  private static final int PIECE_CHARACTERS = 64 * 1024;

  /** What is appended to every row whatever figures are wanted. */
  private static final List<String> SAID_OF_EACH = List.of("verdict", "findings", "error");

  private final Endpoint<Q, R> endpoint;
  private final AnnouncedInput input;
  private final CloseableIterator<CsvRecord> rows;
  private final CsvForm form;
  private final List<String> header;

  /** For each column the path of the field it fills, or null where it passes through. */
  private final List<List<String>> paths = new ArrayList<>();

  private final RowReader<Q> reader;
  private final RowValues resultValues;
  private final List<String> resultPaths;

  /** Which of the result's values the columns hold. */
  private final int[] wanted;

  private List<CsvRecord> piece = new ArrayList<>();
  private int characters;

  private CsvBatch(
      Endpoint<Q, R> endpoint,
      AnnouncedInput input,
      CloseableIterator<CsvRecord> rows,
      CsvForm form) {
    this.endpoint = endpoint;
    this.input = input;
    this.rows = rows;
    this.form = form;
    List<String> all =
        endpoint.result().columns().stream()
            .map(Shape.Column::path)
            .filter(path -> !path.contains("*"))
            .toList();
    this.resultPaths = chosen(all, form.columns());
    this.wanted = resultPaths.stream().mapToInt(all::indexOf).toArray();
    if (!rows.hasNext()) {
      throw ProblemException.of(ProblemType.UNREADABLE, "The CSV has no header line.");
    }
    this.header = rows.next().getFields();
    readHeader();
    this.reader = endpoint.request().rows(paths);
    this.resultValues = endpoint.result().values();
  }

  /**
   * Reads the header.
   *
   * @throws ProblemException with every fault of the header
   */
  static <Q extends Record, R extends Record> CsvBatch<Q, R> open(
      Endpoint<Q, R> endpoint, AnnouncedInput in, CsvForm form) throws IOException {
    return new CsvBatch<>(
        endpoint,
        in,
        CsvReader.builder()
            .fieldSeparator(form.separator())
            .skipEmptyLines(true)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .detectBomHeader(true)
            .ofCsvRecord(in, StandardCharsets.UTF_8)
            .iterator(),
        form);
  }

  /** The figures asked for, or all; verdict, findings and error are never left out. */
  private static List<String> chosen(List<String> all, List<String> asked) {
    if (asked == null) {
      return all;
    }
    Faults faults = new Faults();
    for (String name : asked) {
      if (!all.contains(name) && !SAID_OF_EACH.contains(name)) {
        faults
            .add(CoreFault.UNKNOWN_FIELD)
            .at("/columns/" + name)
            .given(name)
            .with("nearest", Names.didYouMean(name, all));
      }
    }
    if (!faults.none()) {
      throw ProblemException.invalid(faults.list());
    }
    return asked.stream().filter(all::contains).distinct().toList();
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
        paths.add(List.of(column.split("\\.", -1)));
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
    if (header.size() == 1 && header.get(0).contains(";") && form.separator() == ',') {
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

  /** Names of the columns that are appended; one that a field of the request has is told apart. */
  private List<String> resultColumns() {
    Set<String> fields = new HashSet<>();
    for (int i = 0; i < paths.size(); i++) {
      if (paths.get(i) != null) {
        fields.add(header.get(i));
      }
    }
    return Stream.concat(
            resultPaths.stream().map(path -> fields.contains(path) ? "result." + path : path),
            SAID_OF_EACH.stream())
        .toList();
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
  void answer(Pipeline pipeline) throws IOException {
    List<String> names = new ArrayList<>(header);
    names.addAll(resultColumns());
    pipeline.add(() -> written(Stream.of(names)));
    input.beforeWaiting(
        () -> {
          endPiece(pipeline);
          pipeline.flush();
        });
    long nextLine = 2;
    try {
      while (rows.hasNext()) {
        CsvRecord row = rows.next();
        nextLine = row.getStartingLineNumber() + 1;
        add(row, pipeline);
      }
      endPiece(pipeline);
    } catch (CsvParseException malformed) {
      endPiece(pipeline);
      List<String> last = brokenOff(nextLine);
      pipeline.add(() -> written(Stream.of(last)));
    }
    pipeline.flush();
  }

  private void add(CsvRecord row, Pipeline pipeline) throws IOException {
    piece.add(row);
    for (int i = 0; i < row.getFieldCount(); i++) {
      characters += row.getField(i).length();
    }
    if (piece.size() == PIECE_ROWS || characters >= PIECE_CHARACTERS) {
      endPiece(pipeline);
    }
  }

  private void endPiece(Pipeline pipeline) throws IOException {
    if (!piece.isEmpty()) {
      List<CsvRecord> whole = piece;
      piece = new ArrayList<>(PIECE_ROWS);
      characters = 0;
      pipeline.add(() -> written(whole.stream().map(this::answered)));
    }
  }

  private byte[] written(Stream<List<String>> all) throws IOException {
    StringBuilder text = new StringBuilder(PIECE_CHARACTERS);
    try (CsvWriter csv =
        CsvWriter.builder()
            .fieldSeparator(form.separator())
            .lineDelimiter(LineDelimiter.LF)
            .build(new Appender(text))) {
      all.forEach(csv::writeRecord);
    }
    // One conversion of the whole is much faster than one by a stream.
    return text.toString().getBytes(StandardCharsets.UTF_8);
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
    List<String> cells = new ArrayList<>(header.size() + resultPaths.size() + 3);
    cells.addAll(row.getFields());
    try {
      if (cells.size() != header.size()) {
        throw ProblemException.of(
            ProblemType.UNREADABLE,
            "The row has " + cells.size() + " cells, the header " + header.size() + ".");
      }
      Q request = reader.read(row::getField);
      Brief<R> answer = endpoint.brief(request == null ? endpoint.bind(tree(row)) : request);
      Object[] values = new Object[resultValues.size()];
      resultValues.read(answer.result(), values, 0);
      for (int value : wanted) {
        cells.add(cell(values[value]));
      }
      cells.add(answer.verdict().name().toLowerCase(Locale.ROOT));
      cells.add(String.join(" ", answer.codes()));
      cells.add("");
    } catch (RuntimeException failure) {
      fillUpToError(cells);
      cells.add(error(failure, row.getStartingLineNumber()));
    }
    return cells;
  }

  /** A value as it stands in JSON, without quotes. */
  private static String cell(Object value) {
    if (value instanceof Double number) {
      return NumberOutput.toString(number, Json.FAST_DOUBLES);
    }
    if (value instanceof BigDecimal money) {
      return money.toPlainString();
    }
    if (value instanceof Enum<?> constant) {
      return constant.name().toLowerCase(Locale.ROOT);
    }
    return value == null ? "" : value.toString();
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
