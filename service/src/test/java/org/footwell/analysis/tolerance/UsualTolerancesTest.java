package org.footwell.analysis.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.Committed;
import org.footwell.calculation.Shape;
import org.junit.jupiter.api.Test;

class UsualTolerancesTest {

  @Test
  void everyLineIsOfANumberThatSomeRequestStates() {
    Set<String> stated =
        Calculations.all().stream()
            .flatMap(one -> Shape.of(one.card().request()).columns().stream())
            .filter(column -> column.type() == Double.class)
            .map(column -> "." + column.path().replace(".*", ""))
            .collect(Collectors.toSet());
    List<String> ofNone =
        UsualTolerances.all().keySet().stream()
            .filter(name -> stated.stream().noneMatch(path -> path.endsWith("." + name)))
            .toList();
    assertEquals(List.of(), ofNone);
  }

  @Test
  void thePageShowsThemAll() throws IOException {
    Set<String> shown;
    try (Stream<String> lines =
        Files.lines(Committed.PROJECT.resolve("docs/method/tolerance.md"))) {
      shown =
          lines
              .filter(line -> line.startsWith("| `"))
              .collect(Collectors.toCollection(TreeSet::new));
    }
    Set<String> rows =
        UsualTolerances.all().entrySet().stream()
            .map(one -> row(one.getKey(), one.getValue()))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(String.join("\n", rows), String.join("\n", shown));
  }

  private static String row(String name, UsualTolerances.Usual usual) {
    String around = BigDecimal.valueOf(usual.plusMinus()).stripTrailingZeros().toPlainString();
    return "| `%s` | ± %s%s | %s | %s |"
        .formatted(
            name,
            around,
            usual.percent() ? " %" : "",
            usual.distribution().name().toLowerCase(Locale.ROOT),
            usual.source());
  }

  @Test
  void theGroupTellsNumbersOfOneNameApart() {
    assertEquals(
        1.5, UsualTolerances.of("driver.sensitivity.level_db_spl").orElseThrow().plusMinus());
    assertTrue(UsualTolerances.of("channels.0.level_db_spl").isEmpty());
    assertEquals(5, UsualTolerances.of("re_ohm").orElseThrow().plusMinus());
  }
}
