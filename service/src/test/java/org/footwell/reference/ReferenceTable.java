package org.footwell.reference;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A table of values from outside the project: {@code src/test/resources/reference/*.csv}, with a
 * header that says where it comes from. Loading fails when the header is incomplete.
 */
public record ReferenceTable(String name, Map<String, String> origin, List<Row> rows) {

  /** Every table must state these. */
  private static final List<String> ORIGIN =
      List.of("title", "kind", "source", "edition", "typed", "confirmed");

  /** What a table can prove, in the words of its header and of docs/validation.md. */
  static final Map<String, String> KINDS = kinds();

  private static Map<String, String> kinds() {
    Map<String, String> kinds = new LinkedHashMap<>();
    kinds.put("printed", "values as printed by somebody outside the project");
    kinds.put(
        "computed",
        "values of a general-purpose library, a simulator or a script that shares nothing with the"
            + " service");
    kinds.put(
        "by hand",
        "worked by hand from the formula of the source: shows that the service computes it right,"
            + " not that the formula is");
    kinds.put("memory", "values as remembered, not checked against a copy");
    kinds.put(
        "typed twice",
        "the service holds a table typed from the same text: shows typing, and no more");
    return kinds;
  }

  /** One row; cells are read as printed. */
  public record Row(NamedCsvRecord cells) {
    public double number(String column) {
      return Double.parseDouble(cells.getField(column));
    }

    /** The number, or a standard one where nothing is printed. */
    public double numberOr(String column, double standard) {
      String cell = cells.getField(column);
      return cell.isBlank() || cell.equals("-") ? standard : Double.parseDouble(cell);
    }

    public String text(String column) {
      return cells.getField(column);
    }

    @Override
    public String toString() {
      return String.join(",", cells.getFields());
    }
  }

  public static ReferenceTable load(String name) {
    String text = read(name);
    Map<String, String> origin = new LinkedHashMap<>();
    text.lines()
        .filter(line -> line.startsWith("# "))
        .map(line -> line.substring(2).split(": ", 2))
        .forEach(pair -> origin.put(pair[0], pair.length == 2 ? pair[1] : ""));
    for (String must : ORIGIN) {
      if (origin.getOrDefault(must, "").isBlank()) {
        throw new IllegalStateException(name + " does not state its " + must);
      }
    }
    if (!KINDS.containsKey(origin.get("kind"))) {
      throw new IllegalStateException(name + " is of no known kind: " + origin.get("kind"));
    }
    String table =
        text.lines().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n"));
    List<Row> rows = CsvReader.builder().ofNamedCsvRecord(table).stream().map(Row::new).toList();
    if (rows.isEmpty()) {
      throw new IllegalStateException(name + " has no rows");
    }
    return new ReferenceTable(name, origin, rows);
  }

  private static String read(String name) {
    try (InputStream in = ReferenceTable.class.getResourceAsStream("/reference/" + name)) {
      if (in == null) {
        throw new IllegalStateException("no reference table " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
