package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Needs;
import org.footwell.calculation.rule.RefersTo;
import org.footwell.calculation.rule.Rule;
import org.footwell.calculation.rule.Unique;
import org.footwell.calculation.rule.Without;
import org.junit.jupiter.api.Test;

/** Rules beside a record: each kind kept and broken, and left alone where a field is faulty. */
class DeclaredRulesTest {

  public record Part(
      @Schema(description = "Name") String name,
      @Schema(description = "Voltage, V") @DecimalMin("0") @DecimalMax("10") Double voltageV,
      @Schema(description = "Power, W") @DecimalMin("0") @DecimalMax("10") Double powerW,
      @Schema(description = "Price") @DecimalMin("0") @DecimalMax("10") Double price) {}

  public record Link(
      @Schema(description = "One part") String first, @Schema(description = "Other") String last) {}

  /** A rule stands beside what several records have in common. */
  @Without("part.price")
  public interface Form {}

  @Needed("part.name")
  @ExactlyOne({"part.voltage_v", "part.power_w"})
  @AtMostOne({"low_hz", "level_db"})
  @Needs(field = "high_hz", beside = "low_hz")
  @Ascending({"low_hz", "high_hz"})
  @Ascending(value = "steps_mm.*", orEqual = true)
  @Unique("parts.*.name")
  @Unique({"links.*.first", "links.*.last"})
  @RefersTo(field = "links.*.first", to = "parts.*.name")
  public record Request(
      @Schema(description = "Part") Part part,
      @Schema(description = "Low, Hz") Double lowHz,
      @Schema(description = "High, Hz") Double highHz,
      @Schema(description = "Level, dB") Double levelDb,
      @Schema(description = "Steps, mm") List<Double> stepsMm,
      @Schema(description = "Parts") List<Part> parts,
      @Schema(description = "Links") List<Link> links)
      implements Form {}

  @ExactlyOne({"nowhere", "here"})
  public record Misspelt(@Schema(description = "Here") String here) {}

  private static final Map<String, Object> PART = Map.of("name", "a", "power_w", 1.0);

  private static List<String> faults(Map<String, Object> given) {
    Faults faults = new Faults();
    Request request = Shape.of(Request.class).bind(given, false, faults);
    Shape.of(Request.class).check(request, faults);
    return faults.list().stream().map(f -> f.code() + " " + f.pointer()).toList();
  }

  private static void assertFaults(Map<String, Object> given, String... expected) {
    assertEquals(List.of(expected), faults(given));
  }

  private static Map<String, Object> with(String name, Object value) {
    return Map.of("part", PART, name, value);
  }

  @Test
  void aRequestThatKeepsAllRulesHasNoFault() {
    assertFaults(
        Map.of(
            "part",
            PART,
            "low_hz",
            20.0,
            "high_hz",
            80.0,
            "steps_mm",
            List.of(1.0, 1.0, 2.0),
            "parts",
            List.of(PART, Map.of("name", "b")),
            "links",
            List.of(Map.of("first", "a", "last", "x"), Map.of("first", "a", "last", "y"))));
  }

  @Test
  void eachRuleIsToldWhereItIsBroken() {
    assertFaults(Map.of("part", Map.of("power_w", 1.0)), "required /part/name");
    assertFaults(Map.of("part", Map.of("name", "a")), "exactly-one-of ");
    assertFaults(
        Map.of("part", Map.of("name", "a", "power_w", 1, "voltage_v", 1)), "exactly-one-of ");
    assertFaults(Map.of("part", PART, "low_hz", 1.0, "level_db", 2.0), "at-most-one-of /level_db");
    assertFaults(with("high_hz", 80.0), "needed-beside /low_hz");
    assertFaults(Map.of("part", PART, "low_hz", 80.0, "high_hz", 80.0), "not-ascending /high_hz");
    assertFaults(with("steps_mm", List.of(1.0, 3.0, 2.0)), "not-ascending /steps_mm/2");
    assertFaults(with("parts", List.of(PART, PART)), "duplicate /parts/1/name");
    Map<String, Object> link = Map.of("first", "a", "last", "x");
    assertFaults(
        Map.of("part", PART, "parts", List.of(PART), "links", List.of(link, link)),
        "duplicate /links/1/first");
    assertFaults(with("links", List.of(link)), "dangling-reference /links/0/first");
    assertFaults(
        Map.of("part", Map.of("name", "a", "power_w", 1.0, "price", 2.0)),
        "not-allowed /part/price");
  }

  @Needs(field = "steps_mm", beside = "low_hz")
  public record ListNeeds(
      @Schema(description = "Steps, mm") List<Double> stepsMm,
      @Schema(description = "Low, Hz") Double lowHz) {
    public ListNeeds {
      stepsMm = stepsMm == null ? List.of() : stepsMm;
    }
  }

  @Test
  void aListThatIsEmptyByDefaultNeedsNothing() {
    Shape<ListNeeds> shape = Shape.of(ListNeeds.class);
    Faults none = new Faults();
    shape.check(shape.bind(Map.of(), false, none), none);
    assertEquals(List.of(), none.list());
    Faults faults = new Faults();
    shape.check(shape.bind(Map.of("steps_mm", List.of(1.0)), false, faults), faults);
    assertEquals("needed-beside", faults.list().get(0).code());
  }

  @Test
  void aPartThatIsNotThereNeedsNothing() {
    assertFaults(Map.of());
  }

  @Test
  void rulesComeTogetherWithFormAndBoundsButNotOnAFieldThatIsFaultyItself() {
    assertEquals(
        List.of("wrong-type /part/power_w", "not-ascending /high_hz"),
        faults(
            Map.of(
                "part", Map.of("name", "a", "power_w", "one"), "low_hz", 80.0, "high_hz", 20.0)));
    assertEquals(
        List.of("not-allowed /part/power_w", "needed-beside /low_hz"),
        faults(Map.of("part", Map.of("name", "a", "power_w", 99.0), "high_hz", 20.0)));
  }

  @Test
  void whatIsGivenCountsAsGivenWhateverIsWrongWithIt() {
    assertFaults(
        Map.of("part", Map.of("name", "a", "power_w", "one", "voltage_v", 1.0)),
        "wrong-type /part/power_w",
        "exactly-one-of ");
    assertFaults(
        Map.of("part", Map.of("name", "a", "power_w", 99.0, "voltage_v", 1.0)),
        "not-allowed /part/power_w",
        "exactly-one-of ");
    assertFaults(Map.of("part", Map.of("name", "a", "power_w", "one")), "wrong-type /part/power_w");
    assertFaults(
        Map.of("part", PART, "low_hz", "low", "level_db", 2.0),
        "wrong-type /low_hz",
        "at-most-one-of /level_db");
    assertFaults(with("high_hz", "high"), "wrong-type /high_hz", "needed-beside /low_hz");
    assertFaults(Map.of("part", PART, "high_hz", 80.0, "low_hz", "low"), "wrong-type /low_hz");
    assertFaults(
        Map.of("part", Map.of("name", "a", "power_w", 1.0, "price", "dear")),
        "wrong-type /part/price",
        "not-allowed /part/price");
  }

  /** What such a part holds nobody knows. */
  @Test
  void aPartThatCannotBeReadBreaksNoRule() {
    assertFaults(Map.of("part", 3), "wrong-type /part");
    assertFaults(with("parts", List.of(PART, 3)), "wrong-type /parts/1");
  }

  @Needed("parts.*.price")
  public record PricedParts(@Schema(description = "Parts") List<Part> parts) {}

  @Test
  void whatAnEntryNeedsIsToldWhereAnotherIsFaulty() {
    Faults faults = new Faults();
    Shape<PricedParts> shape = Shape.of(PricedParts.class);
    List<Object> parts = List.of(Map.of("price", "dear"), Map.of());
    shape.check(shape.bind(Map.of("parts", parts), false, faults), faults);
    assertEquals(
        List.of("wrong-type /parts/0/price", "required /parts/1/price"),
        faults.list().stream().map(f -> f.code() + " " + f.pointer()).toList());
  }

  @Needed({"part.name", "part.power_w"})
  public record TwoNeeded(@Schema(description = "Part") Part part) {}

  @Test
  void whatIsNeededIsToldWhereAnotherFieldIsFaulty() {
    Faults faults = new Faults();
    Shape<TwoNeeded> shape = Shape.of(TwoNeeded.class);
    shape.check(shape.bind(Map.of("part", Map.of("power_w", 99.0)), false, faults), faults);
    assertEquals(
        List.of("not-allowed /part/power_w", "required /part/name"),
        faults.list().stream().map(f -> f.code() + " " + f.pointer()).toList());
  }

  @Test
  void aRuleAboutAFieldThatIsNotThereIsAMistakeOfTheProgram() {
    IllegalStateException thrown =
        assertThrows(IllegalStateException.class, () -> Shape.of(Misspelt.class));
    assertTrue(thrown.getMessage().contains("Exactly one of nowhere and here."));
  }

  @Test
  void theSentencesAreThoseOfTheContract() {
    assertEquals(
        Arrays.asList(
            "part.name is required here.",
            "Exactly one of part.voltage_v and part.power_w.",
            "At most one of low_hz and level_db.",
            "high_hz needs low_hz.",
            "No two alike in parts.*.name.",
            "No two alike in links.*.first and links.*.last together.",
            "links.*.first is one of parts.*.name.",
            "low_hz and high_hz rise in this order.",
            "steps_mm.* does not fall from entry to entry.",
            "part.price has no meaning here."),
        Shape.of(Request.class).rules().stream().map(Rule::sentence).toList());
  }
}
