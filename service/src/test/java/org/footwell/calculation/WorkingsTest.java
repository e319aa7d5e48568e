package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.analysis.registry.Analysis;
import org.footwell.calculation.AnsweredRequests.Answered;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every number of a result has its step in the workings, whatever is computed: on examples, on the
 * requests that drive the codes, and on both with numbers drawn anew.
 *
 * <p>A number is accounted for by a step of its own value and unit, by the step declared for its field,
 * or by the request that states it. Of a list one entry is worked. A count needs no step: its name and
 * the entries counted say it.
 */
@Tag("long")
class WorkingsTest {

  private static final int DRAWN = 10;

  /** Fewer formulas than this that are worked out again would mean that nothing is checked. */
  private static final int MANY = 180;

  private static final double SAME = 1e-9;
  private static final double ROUNDING = 1e-13;
  private static final Path RESOURCES = Path.of("src/main/resources");

  private static final Map<String, List<Answered>> ANSWERED = new ConcurrentSkipListMap<>();

  @BeforeAll
  static void ask() {
    Stream<Calculation<?, ?>> analyses =
        Stream.of(Analysis.values()).map(analysis -> analysis.of(new SoundLevel()));
    Stream.concat(Calculations.all().stream(), analyses).toList().parallelStream()
        .forEach(one -> ANSWERED.put(one.card().id(), asked(one)));
  }

  private static List<Answered> asked(Calculation<?, ?> calculation) {
    try {
      boolean analysis = Shape.of(calculation.card().request()).holdsRequest();
      return new AnsweredRequests().of(calculation, analysis ? 0 : DRAWN);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @TestFactory
  Stream<DynamicTest> everyNumberHasItsStep() {
    return ANSWERED.entrySet().stream()
        .map(asked -> DynamicTest.dynamicTest(asked.getKey(), () -> complete(asked.getValue())));
  }

  private static void complete(List<Answered> all) {
    Map<String, String> without = new TreeMap<>();
    for (Answered one : all) {
      List<ResultNumber> given = ResultNumber.of(one.request());
      ResultNumber.of((Record) one.answer().result()).stream()
          .collect(Collectors.groupingBy(ResultNumber::kind))
          .forEach(
              (kind, entries) -> {
                if (!accounted(entries, one.answer().workings(), given)) {
                  without.putIfAbsent(kind, kind + " of " + one.request());
                }
              });
    }
    assertEquals("", String.join("\n", without.values()));
  }

  private static boolean accounted(
      List<ResultNumber> entries, List<Step> steps, List<ResultNumber> given) {
    ResultNumber first = entries.get(0);
    return first.name().endsWith("_count")
        || steps.stream().anyMatch(step -> ResultNumber.kind(step.quantity()).equals(first.kind()))
        || entries.stream().anyMatch(entry -> isWorked(entry, steps))
        || entries.stream().allMatch(entry -> isGiven(entry, given));
  }

  /** Any other 0 would do for a 0: its step must have its name. */
  private static boolean isWorked(ResultNumber entry, List<Step> steps) {
    return steps.stream()
        .filter(step -> near(step.value(), entry.value()))
        .anyMatch(
            step ->
                step.quantity().equals(entry.name())
                    || (entry.value() != 0 && step.unit().equals(Units.of(entry.name()))));
  }

  private static boolean isGiven(ResultNumber entry, List<ResultNumber> given) {
    return given.stream()
        .filter(one -> near(one.value(), entry.value()))
        .anyMatch(
            one ->
                one.name().equals(entry.name())
                    || (entry.value() != 0 && last(one.name()).equals(last(entry.name()))));
  }

  private static String last(String name) {
    return name.substring(name.lastIndexOf('_') + 1);
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
  }

  /** Text and value of a step belong together, wherever the text is arithmetic. */
  @Test
  void formulasGiveTheirValues() {
    Set<String> wrong = new TreeSet<>();
    Set<String> right = new TreeSet<>();
    ANSWERED.forEach(
        (id, all) ->
            all.stream()
                .flatMap(one -> one.answer().workings().stream())
                .forEach(
                    step -> {
                      OptionalDouble value = FormulaText.of(step);
                      if (value.isPresent()) {
                        boolean gives = gives(step, value.getAsDouble());
                        (gives ? right : wrong)
                            .add(id + " " + step.quantity() + " = " + step.formula());
                      }
                    }));
    assertEquals("", String.join("\n", wrong));
    assertTrue(right.size() >= MANY, () -> "only " + right.size());
  }

  /** Rounding counts by the numbers put in: a small difference of large ones has fewer digits. */
  private static boolean gives(Step step, double value) {
    double size = step.inputs().values().stream().mapToDouble(Math::abs).max().orElse(0);
    return near(value, step.value()) || Math.abs(value - step.value()) <= ROUNDING * size;
  }

  /** What no answer here has may come in another one. */
  @Test
  void everyNumberIsSeenOrDeclared() throws IOException {
    Set<String> open = new TreeSet<>();
    Set<String> given = new TreeSet<>();
    for (Calculation<?, ?> calculation : Calculations.all()) {
      open.addAll(ResultNumber.fields(calculation.card().result()));
      given.addAll(ResultNumber.fields(calculation.card().request()));
    }
    open.removeAll(given);
    open.removeAll(declared());
    open.removeAll(seen());
    assertEquals(Set.of(), open);
  }

  /** A line that is not of a number, or that says what a formula of the run says, is dead. */
  @Test
  void everyDeclarationIsNeeded() throws IOException {
    Set<String> dead = declared();
    Set<String> mayBe = new TreeSet<>();
    Calculations.all().forEach(one -> mayBe.addAll(ResultNumber.fields(one.card().result())));
    ANSWERED.values().stream()
        .flatMap(List::stream)
        .forEach(one -> mayBe.addAll(ResultNumber.fieldsOf(one.answer().result())));
    mayBe.removeAll(seen());
    dead.removeAll(mayBe);
    ANSWERED.values().stream()
        .flatMap(List::stream)
        .forEach(
            one -> {
              Set<String> shown =
                  one.answer().workings().stream()
                      .map(step -> ResultNumber.kind(step.quantity()))
                      .collect(Collectors.toSet());
              ResultNumber.of((Record) one.answer().result()).stream()
                  .filter(number -> shown.contains(number.kind()))
                  .forEach(number -> dead.remove(number.field()));
            });
    assertEquals(Set.of(), dead);
  }

  private static Set<String> seen() {
    return ANSWERED.values().stream()
        .flatMap(List::stream)
        .flatMap(one -> ResultNumber.of((Record) one.answer().result()).stream())
        .map(ResultNumber::field)
        .collect(Collectors.toSet());
  }

  /** The fields that say how they come about. */
  private static Set<String> declared() throws IOException {
    Set<String> fields = new TreeSet<>();
    try (Stream<Path> files = Files.walk(RESOURCES)) {
      for (Path file : files.filter(one -> one.endsWith("workings.properties")).toList()) {
        String home = RESOURCES.relativize(file.getParent()).toString().replace('/', '.');
        for (String line : Files.readAllLines(file)) {
          if (line.contains(" = ")) {
            fields.add(home + "." + line.substring(0, line.indexOf(" = ")));
          }
        }
      }
    }
    return fields;
  }
}
