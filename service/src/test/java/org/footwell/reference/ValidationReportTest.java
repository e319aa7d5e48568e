package org.footwell.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.Committed;
import org.footwell.calculation.Card;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** docs/validation.md: every calculation with its outside checks and the largest deviation. */
@Tag("long")
class ValidationReportTest {

  /** What lists others, or chooses by them, is checked through them. */
  private static final Set<String> COMPOSED = Set.of("plan-questions", "plan-repair");

  @Test
  void theReportIsUpToDate() throws IOException {
    Committed.assertUpToDate("docs/validation.md", report(OutsideChecks.all()));
  }

  @Test
  void everyCalculationIsHeldAgainstSomethingOutside() {
    Set<String> checked =
        OutsideChecks.all().stream().map(OutsideCheck::calculation).collect(Collectors.toSet());
    List<String> unchecked =
        Calculations.all().stream()
            .map(calculation -> calculation.card().id())
            .filter(id -> !checked.contains(id) && !COMPOSED.contains(id))
            .toList();
    assertEquals(List.of(), unchecked);
  }

  @Test
  void everyTableStatesItsOriginAndIsUsed() throws IOException {
    Set<String> used =
        OutsideChecks.all().stream().map(OutsideCheck::table).collect(Collectors.toSet());
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/reference"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = file.getFileName().toString();
        assertFalse(ReferenceTable.load(name).rows().isEmpty());
        assertEquals(true, used.contains(name), name + " is used by no check");
      }
    }
  }

  @Test
  void everyCalculationHasItsMethodPage() {
    List<String> missing =
        Calculations.all().stream()
            .map(calculation -> calculation.card().id())
            .filter(id -> !Files.exists(Committed.PROJECT.resolve("docs/method/" + id + ".md")))
            .toList();
    assertEquals(List.of(), missing);
  }

  private static String report(List<OutsideCheck> checks) {
    StringBuilder out = new StringBuilder();
    out.append(
        """
        # Outside checks

        Every calculation is held against something outside the project. Written by the build from
        the checks in the tests; the tables lie in `service/src/test/resources/reference/` with
        their origin. "Allowed" comes from the last printed digit of the source. Rows "6 of 8" are
        those that the quantity applies to; the header of the table says so where others were left
        out. What a table can prove is its kind:

        """);
    ReferenceTable.KINDS.forEach(
        (kind, meaning) -> out.append("- *" + kind + "*: " + meaning + "\n"));
    out.append(
        """

        | calculation | quantity | rows | largest deviation | allowed | kind | against |
        |---|---|---|---|---|---|---|
        """);
    for (OutsideCheck check : checks) {
      ReferenceTable table = ReferenceTable.load(check.table());
      List<Double> deviations =
          table.rows().stream().filter(check.rows()).map(check::deviation).toList();
      double largest = deviations.stream().mapToDouble(d -> d).max().orElseThrow();
      out.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %s | %s | %s | %s | [%s](#%s) |%n",
              check.calculation(),
              check.quantity(),
              rows(deviations.size(), table.rows().size()),
              shown(largest, check),
              amount(check.tolerance(), check.relative()),
              table.origin().get("kind"),
              table.origin().get("source").replace("|", "\\|"),
              table.name().replace(".", "").replace("_", "-")));
    }
    out.append(
        "\nplan-questions lists what the others answer, plan-repair chooses by plan-review: they are checked through them.\n\n## Tables\n");
    for (String name :
        checks.stream().map(OutsideCheck::table).collect(Collectors.toCollection(TreeSet::new))) {
      ReferenceTable table = ReferenceTable.load(name);
      out.append("\n### ").append(name).append("\n\n");
      table
          .origin()
          .forEach(
              (key, value) -> out.append("- ").append(key).append(": ").append(value).append('\n'));
    }
    out.append("\n## Sources the formulas stand on\n");
    Calculations.all()
        .forEach(
            calculation -> {
              Card<?, ?> card = calculation.card();
              out.append("\n**").append(card.id()).append("**\n\n");
              card.sources()
                  .forEach(source -> out.append("- ").append(source.citation()).append('\n'));
            });
    return out.toString();
  }

  private static String rows(int checked, int printed) {
    return checked == printed ? "" + printed : checked + " of " + printed;
  }

  /** What is far below the tolerance may differ between processors, and is not told apart. */
  private static String shown(double largest, OutsideCheck check) {
    double little = check.tolerance() / 100;
    return largest < little
        ? "< " + amount(little, check.relative())
        : amount(largest, check.relative());
  }

  /** Two digits are enough, and do not change with the processor's last bit. */
  private static String amount(double number, boolean relative) {
    double shown = relative ? number * 100 : number;
    String text = shown == 0 || shown < 1e-9 ? "0" : String.format(Locale.ROOT, "%.2g", shown);
    return text + (relative ? " %" : "");
  }
}
