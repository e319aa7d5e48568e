package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Vocabulary;
import org.junit.jupiter.api.Test;

/**
 * One name, one quantity: what a request calls so means the same in every request and result, and may be
 * the same numbers. What does not is listed with its reason.
 */
class VocabularyTest {

  private static final Map<String, Calculation<?, ?>> ALL =
      Calculations.all().stream()
          .collect(Collectors.toMap(c -> c.card().id(), c -> c, (a, b) -> a, TreeMap::new));

  private static Stream<Shape.Column> requests() {
    return ALL.values().stream().flatMap(c -> Shape.of(c.card().request()).columns().stream());
  }

  private static Stream<Shape.Column> results() {
    return ALL.values().stream().flatMap(c -> Shape.of(c.card().result()).columns().stream());
  }

  /** The name of a leaf, or of the list it is an entry of. */
  private static String name(Shape.Column column) {
    String path = column.path().replaceAll("\\.\\*$", "");
    return path.substring(path.lastIndexOf('.') + 1);
  }

  private static Set<String> listed(String file) {
    Properties reasons = new Properties();
    try (InputStream in = VocabularyTest.class.getResourceAsStream("/vocabulary/" + file)) {
      reasons.load(in);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    reasons.forEach(
        (name, reason) -> assertEquals(false, reason.toString().isBlank(), name::toString));
    return new TreeSet<>(reasons.stringPropertyNames());
  }

  /** Whether it is neither said as the vocabulary does nor as any request does: a part is said once. */
  private static boolean saysOtherwise(Shape.Column column, Map<String, Set<String>> asked) {
    return !asked.get(name(column)).contains(column.description())
        && Vocabulary.of(name(column))
            .map(quantity -> !quantity.sentence().equals(column.description()))
            .orElse(true);
  }

  /** Names in several places whose sentences are not one. */
  private static Set<String> names(Stream<Shape.Column> columns, Predicate<Shape.Column> which) {
    return columns
        .filter(which)
        .map(VocabularyTest::name)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void aResultFieldThatHasTheNameOfARequestFieldMeansTheSameUnlessListed() {
    Map<String, Set<String>> asked =
        requests()
            .collect(
                Collectors.groupingBy(
                    VocabularyTest::name,
                    Collectors.mapping(
                        column -> String.valueOf(column.description()), Collectors.toSet())));
    assertEquals(
        listed("other-meaning-in-results.properties"),
        names(
            results(), column -> asked.containsKey(name(column)) && saysOtherwise(column, asked)));
  }

  @Test
  void requestFieldsOfOneNameMayBeTheSameNumbersUnlessListed() {
    Map<String, Map<String, Set<String>>> places =
        requests()
            .collect(
                Collectors.groupingBy(
                    VocabularyTest::name,
                    TreeMap::new,
                    Collectors.groupingBy(
                        column -> column.allowed().toString(),
                        TreeMap::new,
                        Collectors.mapping(
                            Shape.Column::path, Collectors.toCollection(TreeSet::new)))));
    places.values().removeIf(byRange -> byRange.size() == 1);
    Set<String> listed = listed("other-range.properties");
    Map<String, Object> unlisted = new TreeMap<>(places);
    unlisted.keySet().removeAll(listed);
    assertEquals(
        Map.of(),
        unlisted,
        "of one name but not of one range: use one, or list the name in"
            + " vocabulary/other-range.properties with the reason");
    listed.removeAll(places.keySet());
    assertEquals(Set.of(), listed, "listed in vocabulary/other-range.properties, but of one range");
  }
}
