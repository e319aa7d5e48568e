package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.footwell.Calculations;
import org.footwell.calculation.Vocabulary.Quantity;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A number of a result that has the name of a quantity lies in the range of that quantity, so that it can be
 * put into the next request as it is. What may lie beyond is listed with its reason.
 */
@Tag("long")
class ResultRangeTest {

  private static final String LISTED = "/vocabulary/beyond-range-in-results.properties";

  /** Fewer numbers with a range than this would mean that nothing is looked at. */
  private static final int MANY = 1_000;

  @Test
  void numbersOfResultsLieInTheRangeOfTheirNameUnlessListed() {
    Map<String, String> beyond = new TreeMap<>();
    int seen = 0;
    for (Calculation<?, ?> calculation : Calculations.all()) {
      for (AnsweredRequests.Answered one : answered(calculation)) {
        for (ResultNumber number : ResultNumber.of((Record) one.answer().result())) {
          Quantity quantity = Vocabulary.of(number.name()).orElse(null);
          if (quantity != null && quantity.least() != null) {
            seen++;
            if (!isWithin(number.value(), quantity)) {
              beyond.put(
                  number.name(),
                  calculation.card().id() + " " + number.kind() + " " + number.value());
            }
          }
        }
      }
    }
    assertTrue(seen > MANY, seen + " numbers");
    Map<String, String> unlisted = new TreeMap<>(beyond);
    unlisted.keySet().removeAll(listed());
    assertEquals(Map.of(), unlisted);
    Set<String> idle = new TreeSet<>(listed());
    idle.removeAll(beyond.keySet());
    assertEquals(new TreeSet<>(), idle, "listed, but nothing lies beyond");
  }

  private static boolean isWithin(double value, Quantity quantity) {
    return value >= Double.parseDouble(quantity.least())
        && value <= Double.parseDouble(quantity.most());
  }

  private static Iterable<AnsweredRequests.Answered> answered(Calculation<?, ?> calculation) {
    try {
      return new AnsweredRequests().of(calculation, 0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> listed() {
    Properties reasons = new Properties();
    try (InputStream in = ResultRangeTest.class.getResourceAsStream(LISTED)) {
      reasons.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    reasons.forEach((name, reason) -> assertTrue(!reason.toString().isBlank(), name::toString));
    return new TreeSet<>(reasons.stringPropertyNames());
  }
}
