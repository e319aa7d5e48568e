package org.footwell.reference;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.footwell.Answers;
import org.footwell.Calculations;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Series;
import org.footwell.calculation.text.Names;
import org.junit.jupiter.api.Test;

/**
 * Our own answers of an earlier day: the examples of all cards, the demo plan among them, and what
 * the service computes for each row of the tables from outside. They prove nothing about truth;
 * they show that a change of the house changes no figure. A change that is meant is written down
 * with {@code -Dfootwell.pin=true}, which leaves what is still the same, and its reason in the change
 * log.
 */
class PinnedAnswersTest {

  private static final Path PINS = Path.of("src/test/resources/pins");
  private static final double SAME = 1e-9;

  /** What is left of a difference of like numbers may change with the order of a sum. */
  private static final double NOTHING = 1e-12;

  @Test
  void examplesAreAnsweredAsBefore() throws IOException {
    Map<String, String> now = new LinkedHashMap<>();
    for (Calculation<?, ?> calculation : Calculations.all()) {
      answer(calculation, now);
    }
    assertAsPinned("examples.txt", now);
  }

  @Test
  void rowsOfReferenceTablesAreComputedAsBefore() throws IOException {
    Map<String, String> now = new LinkedHashMap<>();
    for (OutsideCheck check : OutsideChecks.all()) {
      String name = check.calculation() + "|" + check.quantity() + "|" + check.table();
      for (ReferenceTable.Row row : ReferenceTable.load(check.table()).rows()) {
        if (check.rows().test(row)) {
          now.merge(name, Double.toString(check.value(row)), (a, b) -> a + " " + b);
        }
      }
    }
    assertAsPinned("reference-rows.txt", now);
  }

  private static <Q extends Record, R extends Record> void answer(
      Calculation<Q, R> calculation, Map<String, String> into) throws IOException {
    String id = calculation.card().id();
    Card<Q, R> card = calculation.card();
    Object example = new ObjectMapper().readValue(card.example(), Object.class);
    Q request = new Engine().bind(card.request(), example, false);
    Answer<R> answer = Answers.of(calculation, request);
    flatten(id, answer.result(), into);
    into.put(id + " verdict", answer.verdict().toString());
    for (Finding finding : answer.findings()) {
      into.merge(id + " " + finding.code(), finding.pointer(), (a, b) -> a + " " + b);
    }
  }

  private static void flatten(String path, Object value, Map<String, String> into) {
    if (value instanceof Record record) {
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        flatten(path + "/" + Names.snake(component.getName()), read(record, component), into);
      }
    } else if (value instanceof List<?> list) {
      if (list.stream().allMatch(Double.class::isInstance)) {
        into.put(path, String.join(" ", list.stream().map(Object::toString).toList()));
        return;
      }
      for (int i = 0; i < list.size(); i++) {
        flatten(path + "/" + i, list.get(i), into);
      }
    } else if (value instanceof Map<?, ?> map) {
      map.forEach((key, inner) -> flatten(path + "/" + key, inner, into));
    } else if (value instanceof Series series) {
      into.put(path, series.size() + " numbers");
    } else {
      into.put(path, String.valueOf(value).replace("\n", "\\n"));
    }
  }

  private static Object read(Record record, RecordComponent component) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void assertAsPinned(String file, Map<String, String> now) throws IOException {
    Path pins = PINS.resolve(file);
    Map<String, String> pinned = read(pins);
    if (Boolean.getBoolean("footwell.pin")) {
      StringBuilder text = new StringBuilder();
      now.forEach(
          (name, value) -> {
            String before = pinned.getOrDefault(name, value);
            String kept = same(before, value) ? before : value;
            text.append(name).append('\t').append(kept).append('\n');
          });
      Files.writeString(pins, text);
      return;
    }
    List<String> changed = new ArrayList<>();
    now.keySet().stream().filter(name -> !pinned.containsKey(name)).forEach(changed::add);
    pinned.forEach(
        (name, value) -> {
          if (!now.containsKey(name) || !same(value, now.get(name))) {
            changed.add(String.format(Locale.ROOT, "%s: %s, was %s", name, now.get(name), value));
          }
        });
    assertTrue(changed.isEmpty(), () -> String.join("\n", changed));
  }

  private static Map<String, String> read(Path pins) throws IOException {
    Map<String, String> pinned = new LinkedHashMap<>();
    for (String line : Files.readAllLines(pins)) {
      String[] pair = line.split("\t", 2);
      pinned.put(pair[0], pair[1]);
    }
    return pinned;
  }

  private static boolean same(String pinned, String now) {
    String[] before = pinned.split(" ", -1);
    String[] after = now.split(" ", -1);
    if (before.length != after.length) {
      return false;
    }
    for (int i = 0; i < before.length; i++) {
      if (!before[i].equals(after[i]) && !near(before[i], after[i])) {
        return false;
      }
    }
    return true;
  }

  private static boolean near(String before, String after) {
    try {
      double was = Double.parseDouble(before);
      double is = Double.parseDouble(after);
      double largest = Math.max(Math.abs(was), Math.abs(is));
      return Math.abs(was - is) <= Math.max(SAME * largest, NOTHING);
    } catch (NumberFormatException words) {
      return false;
    }
  }
}
