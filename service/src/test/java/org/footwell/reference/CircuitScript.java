package org.footwell.reference;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.footwell.reference.ReferenceTable.Row;
import org.junit.jupiter.api.Assertions;

/** Runs a script beside a circuit that writes a reference table with the circuit simulator. */
public final class CircuitScript {

  private static final Path HOME = Path.of("src/test/resources/reference/ngspice");

  private CircuitScript() {}

  /** The rows the script writes now. */
  public static List<Row> rows(String script) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder("bash", HOME.resolve(script).toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    Assertions.assertEquals(0, process.waitFor(), "is ngspice installed?");
    String table =
        output.lines().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n"));
    return CsvReader.builder().ofNamedCsvRecord(table).stream().map(Row::new).toList();
  }

  /** Fails unless the committed table has the same numbers, but for a ratio. */
  public static void assertCommitted(String table, List<Row> now, double ratio) {
    List<Row> committed = ReferenceTable.load(table).rows();
    Assertions.assertEquals(committed.size(), now.size());
    for (int i = 0; i < now.size(); i++) {
      for (String column : now.get(i).cells().getHeader()) {
        assertWithin(ratio, now.get(i), column, committed.get(i).number(column));
      }
    }
  }

  /** Fails unless a value is that of a row, but for a ratio. */
  public static void assertWithin(double ratio, Row row, String column, double actual) {
    double expected = row.number(column);
    Assertions.assertEquals(
        expected, actual, ratio * Math.abs(expected), () -> column + " of " + row);
  }
}
