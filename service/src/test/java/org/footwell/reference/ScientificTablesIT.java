package org.footwell.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Runs the scripts that write tables with SciPy, and holds the committed tables against theirs. */
@Tag("workbench")
class ScientificTablesIT {

  private static final Path COMMITTED = Path.of("src/test/resources/reference");
  private static final Path SCRIPTS = COMMITTED.resolve("scipy");

  /** What scripts import and what writes nothing by itself. */
  private static final Set<String> SHARED =
      Set.of("tables.py", "vehicle_channel.py", "vehicle_circuit.py", "vehicle_supply.py");

  /** Not worth a digit: what is left of a zero. */
  private static final double NOTHING = 1e-12;

  @TempDir static Path written;

  @BeforeAll
  static void write() throws IOException, InterruptedException {
    for (String script : names(SCRIPTS, ".py")) {
      if (SHARED.contains(script)) {
        continue;
      }
      // The system's own Python: the one that has Debian's python3-scipy.
      Process process =
          new ProcessBuilder(
                  "/usr/bin/python3", "-B", SCRIPTS.resolve(script).toString(), written.toString())
              .inheritIO()
              .start();
      assertEquals(0, process.waitFor(), script + ": is python3-scipy installed?");
    }
  }

  @Test
  void everyTableThatNamesAScriptIsWrittenByIt() throws IOException {
    Set<String> named = new TreeSet<>();
    for (String table : names(COMMITTED, ".csv")) {
      if (ReferenceTable.load(table).origin().toString().contains("SciPy 1")) {
        named.add(table);
      }
    }
    assertEquals(named, names(written, ".csv"));
  }

  @TestFactory
  Stream<DynamicTest> theCommittedTableIsWhatSciPySays() throws IOException {
    return names(written, ".csv").stream()
        .map(table -> dynamicTest(table, () -> assertSame(table)));
  }

  private static void assertSame(String table) throws IOException {
    List<String> committed = lines(COMMITTED.resolve(table));
    List<String> now = lines(written.resolve(table));
    assertEquals(committed.size(), now.size(), "rows");
    for (int i = 0; i < now.size(); i++) {
      String[] expected = committed.get(i).split("[, ]", -1);
      String[] actual = now.get(i).split("[, ]", -1);
      assertEquals(expected.length, actual.length, "cells of row " + i);
      for (int k = 0; k < actual.length; k++) {
        String place = "row " + i + ", value " + k;
        assertTrue(same(expected[k], actual[k]), place + ": " + expected[k] + ", " + actual[k]);
      }
    }
  }

  /** The same text, or numbers that part by no more than two of the last printed digit. */
  static boolean same(String committed, String now) {
    if (committed.equals(now)) {
      return true;
    }
    try {
      double expected = Double.parseDouble(committed);
      double apart = Math.abs(expected - Double.parseDouble(now));
      double digits = 1e-9 * Math.abs(expected);
      // A phase of 180 degrees is one of -180.
      return Math.min(apart, Math.abs(apart - 360)) <= Math.max(2 * lastDigit(committed), digits)
          || apart <= NOTHING;
    } catch (NumberFormatException text) {
      return false;
    }
  }

  private static double lastDigit(String number) {
    String[] parts = number.toLowerCase(Locale.ROOT).split("e", -1);
    int point = parts[0].indexOf('.');
    int decimals = point < 0 ? 0 : parts[0].length() - point - 1;
    return Math.pow(10, (parts.length > 1 ? Integer.parseInt(parts[1]) : 0) - decimals);
  }

  /** The rows; versions of the libraries and other words of the header may differ. */
  private static List<String> lines(Path table) throws IOException {
    return Files.readAllLines(table).stream().filter(line -> !line.startsWith("#")).toList();
  }

  private static Set<String> names(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(ending))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }
}
