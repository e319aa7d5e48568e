package org.footwell.electrical.passive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.footwell.electrical.passive.Circuits.Values;
import org.footwell.reference.ReferenceTable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Runs the netlists through ngspice and holds them against the calculations and the table. */
@Tag("workbench")
class CircuitIT {

  private static final Path NETLISTS = Path.of("src/test/resources/reference/ngspice/impedance");
  private static final double RELATIVE = 0.001;
  private static final double DEGREES = 0.06;
  private static final double DECIBELS = 0.009;

  @TempDir Path work;

  private record Row(double frequencyHz, Values values) {}

  @TestFactory
  Stream<DynamicTest> everyCircuitAgreesWithTheCalculation() throws IOException {
    return names().stream()
        .map(
            name ->
                dynamicTest(
                    name,
                    () -> {
                      List<Row> rows = run(name);
                      assertFalse(rows.isEmpty());
                      for (Row row : rows) {
                        agree(name, row, Circuits.at(name, row.frequencyHz()));
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> everyCircuitAgreesWithTheCommittedTable() throws IOException {
    return names().stream()
        .map(
            name ->
                dynamicTest(
                    name,
                    () -> {
                      List<Row> rows = run(name);
                      List<ReferenceTable.Row> table = table(name);
                      assertEquals(table.size(), rows.size());
                      for (int i = 0; i < rows.size(); i++) {
                        assertEquals(
                            table.get(i).number("frequency_hz"), rows.get(i).frequencyHz(), 1e-4);
                        agree(name, rows.get(i), values(table.get(i)));
                      }
                    }));
  }

  private static List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(NETLISTS)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".cir"))
          .map(name -> name.substring(0, name.length() - 4))
          .sorted()
          .toList();
    }
  }

  private static List<ReferenceTable.Row> table(String name) {
    return ReferenceTable.load("impedance-ngspice.csv").rows().stream()
        .filter(row -> row.text("circuit").equals(name))
        .toList();
  }

  private static Values values(ReferenceTable.Row row) {
    return new Values(
        row.number("modulus_ohm"),
        row.number("phase_deg"),
        row.number("level_db"),
        row.number("level_phase_deg"));
  }

  private List<Row> run(String name) throws IOException, InterruptedException {
    Path folder = Files.createDirectories(work.resolve(name));
    Path log = folder.resolve("log");
    Process ngspice =
        new ProcessBuilder(
                "ngspice", "-b", NETLISTS.resolve(name + ".cir").toAbsolutePath().toString())
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    assertTrue(ngspice.waitFor(60, TimeUnit.SECONDS), "ngspice does not end");
    assertEquals(0, ngspice.exitValue(), Files.readString(log));
    List<Row> rows = new ArrayList<>();
    for (String line : Files.readAllLines(folder.resolve("result.txt"))) {
      // Pairs of frequency and value, one pair for each quantity.
      String[] cells = line.trim().split("\\s+");
      double[] numbers = Stream.of(cells).mapToDouble(Double::parseDouble).toArray();
      rows.add(new Row(numbers[0], new Values(numbers[1], numbers[3], numbers[5], numbers[7])));
    }
    return rows;
  }

  private static void agree(String name, Row row, Values ours) {
    Values theirs = row.values();
    String where = name + " at " + row.frequencyHz() + " Hz";
    assertEquals(theirs.modulusOhm(), ours.modulusOhm(), RELATIVE * theirs.modulusOhm(), where);
    assertEquals(theirs.phaseDeg(), ours.phaseDeg(), DEGREES, where);
    assertEquals(theirs.levelDb(), ours.levelDb(), DECIBELS, where);
    double turn = theirs.levelPhaseDeg() - ours.levelPhaseDeg();
    assertEquals(0, Math.IEEEremainder(turn, 360), DEGREES, where);
  }
}
