package org.footwell.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.footwell.RunningJar;
import org.footwell.acoustic.driver.CatalogueSample;
import org.footwell.acoustic.driver.CatalogueSample.Row;
import org.footwell.acoustic.driver.PlantedFault;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The made-up catalogue of 5,000 drivers, checked over HTTP by the built service. */
class CatalogueIT {

  private static final List<Row> ROWS = CatalogueSample.rows(5000, 1);
  private static final String[] REPORTS = {
    "--junit=junit.xml", "--sarif=check.sarif", "--markdown=check.md", "--write-baseline=known"
  };

  @TempDir private static Path folder;
  private static RunningJar service;
  private static Program program;

  @BeforeAll
  static void check() throws IOException, InterruptedException {
    service = new RunningJar();
    CatalogueSample.write(ROWS, folder.resolve("drivers.csv"));
    program = run("drivers.csv");
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  private static Program run(String... arguments) throws IOException, InterruptedException {
    List<String> all = new ArrayList<>(List.of(REPORTS));
    all.addAll(List.of(arguments));
    return Program.run(folder, service.address().toString(), all.toArray(String[]::new));
  }

  @Test
  void everyPlantedFaultIsFoundAtItsLine() throws IOException {
    Sarif sarif = Sarif.read(folder.resolve("check.sarif"));
    Map<String, Set<String>> found = sarif.codes("error", "warning", "note");
    Map<String, Long> lines = sarif.lines();
    List<String> missed = new ArrayList<>();
    Set<Object> kinds = new HashSet<>();
    for (int i = 0; i < ROWS.size(); i++) {
      Row row = ROWS.get(i);
      if (row.fault() != null) {
        kinds.add(row.fault());
        Set<String> codes = found.getOrDefault(row.partId(), Set.of());
        if (row.fault().codes().stream().noneMatch(codes::contains)
            || lines.get(row.partId()) != i + 2) {
          missed.add(row.partId() + " " + row.fault() + " " + codes);
        }
      }
    }
    assertEquals(List.of(), missed);
    assertEquals(PlantedFault.values().length, kinds.size());
  }

  @Test
  void noCleanRowIsStoppedOrWarnedAbout() throws IOException {
    Map<String, Set<String>> blamed =
        Sarif.read(folder.resolve("check.sarif")).codes("error", "warning");
    ROWS.stream().filter(row -> row.fault() != null).map(Row::partId).forEach(blamed::remove);
    assertEquals(Map.of(), blamed);
  }

  @Test
  void theSummaryCountsEveryRowAndTheCheckFails() {
    assertEquals(1, program.code(), program.err());
    assertEquals("", program.err());
    String first = program.out().lines().findFirst().orElseThrow();
    assertTrue(
        first.matches("drivers.csv: 5000 rows: \\d+ stop, \\d+ warning, \\d+ note, \\d+ ok"));
    int sum = 0;
    for (String count : first.replaceAll(".*rows: |[^0-9 ]", "").strip().split(" +", -1)) {
      sum += Integer.parseInt(count);
    }
    assertEquals(5000, sum);
    assertTrue(program.out().contains("\nthe worst 10 of "));
  }

  @Test
  void junitHasACaseOfItsOwnNameForEveryFinding() throws Exception {
    JunitXml xml = JunitXml.read(folder.resolve("junit.xml"));
    assertEquals(xml.tests(), new HashSet<>(xml.names()).size());
    Sarif sarif = Sarif.read(folder.resolve("check.sarif"));
    int clean = ROWS.size() - sarif.codes("error", "warning", "note").size();
    assertEquals(sarif.results().size() + clean, xml.tests());
  }

  @Test
  void whatIsInTheBaselineIsNoNews() throws Exception {
    Program again =
        Program.run(
            folder,
            service.address().toString(),
            "--baseline=known",
            "--fail-on=note",
            "drivers.csv");
    assertEquals(0, again.code());
    assertTrue(
        again.out().contains("5000 rows: 0 stop, 0 warning, 0 note, 5000 without news"),
        again.out());
  }

  /** Twenty times the catalogue, in the heap that everything here runs in, with every report. */
  @Test
  void aCatalogueOfAHundredThousandRowsFitsThroughTheSameSmallHeap() throws Exception {
    Path large = Files.createDirectory(folder.resolve("large"));
    List<String> lines = Files.readAllLines(folder.resolve("drivers.csv"));
    try (BufferedWriter out = Files.newBufferedWriter(large.resolve("drivers.csv"))) {
      out.write(lines.get(0) + "\n");
      for (int i = 0; i < 20; i++) {
        for (String line : lines.subList(1, lines.size())) {
          out.write(i + "-" + line + "\n");
        }
      }
    }
    List<String> arguments = new ArrayList<>(List.of(REPORTS));
    arguments.add("drivers.csv");
    Program check =
        Program.run(large, service.address().toString(), arguments.toArray(String[]::new));
    assertEquals(1, check.code(), check.err());
    assertEquals(times20(program.out()), counts(check.out()));
    assertTrue(Files.size(large.resolve("check.md")) < 1 << 20);
    assertTrue(Files.readString(large.resolve("check.md")).contains("\nCut here to stay under"));
    assertFalse(Files.exists(large.resolve("check.md.part")));
  }

  private static Map<String, Long> counts(String summary) {
    Map<String, Long> counts = new HashMap<>();
    Matcher count =
        Pattern.compile("(?m)^  (?:stop|warning|note) +(\\S+) +(\\d+)  ").matcher(summary);
    while (count.find()) {
      counts.put(count.group(1), Long.parseLong(count.group(2)));
    }
    assertFalse(counts.isEmpty());
    return counts;
  }

  private static Map<String, Long> times20(String summary) {
    Map<String, Long> counts = counts(summary);
    counts.replaceAll((code, count) -> 20 * count);
    return counts;
  }
}
