package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.footwell.Calculations;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Several things of a result are a list, not a text in which they are joined; a choice is one of its
 * constants. Texts of several words are the caller's own or notations, listed with their reason.
 */
@Tag("long")
class TypedResultsTest {

  private static final String LISTED = "/vocabulary/words-in-results.properties";

  /** Fewer texts than this would mean that nothing is looked at. */
  private static final int MANY = 500;

  private int seen;

  @Test
  void textsOfResultsAreSingleWordsUnlessListed() throws IOException {
    Map<String, String> joined = new TreeMap<>();
    for (Calculation<?, ?> calculation : Calculations.all()) {
      String id = calculation.card().id();
      for (AnsweredRequests.Answered one : new AnsweredRequests().of(calculation, 0)) {
        Record result = (Record) one.answer().result();
        collect(Shape.of(result.getClass()).root(), result, id, joined);
      }
    }
    assertTrue(seen > MANY, seen + " texts");
    Map<String, String> unlisted = new TreeMap<>(joined);
    unlisted.keySet().removeAll(listed());
    assertEquals(Map.of(), unlisted);
    Set<String> idle = new TreeSet<>(listed());
    idle.removeAll(joined.keySet());
    assertEquals(new TreeSet<>(), idle, "listed, but a single word everywhere");
  }

  private void collect(Node node, Object value, String path, Map<String, String> joined) {
    if (value instanceof String text) {
      seen++;
      if (text.chars().anyMatch(c -> c == ' ' || c == ',' || c == ';' || c == '|')) {
        joined.put(path, text);
      }
    } else if (node instanceof Node.Group group && value != null) {
      group
          .members()
          .forEach((name, one) -> collect(one.node(), one.of(value), path + "." + name, joined));
    } else if (node instanceof Node.Repeated list && value != null) {
      ((List<?>) value).forEach(entry -> collect(list.element(), entry, path, joined));
    }
  }

  private static Set<String> listed() throws IOException {
    Properties reasons = new Properties();
    try (InputStream in = TypedResultsTest.class.getResourceAsStream(LISTED)) {
      reasons.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    reasons.forEach((name, reason) -> assertTrue(!reason.toString().isBlank(), name::toString));
    return new TreeSet<>(reasons.stringPropertyNames());
  }
}
