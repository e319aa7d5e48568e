package org.footwell.contract;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import org.footwell.Calculations;
import org.footwell.analysis.Sweep;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Engine;
import org.footwell.web.batch.SweepTable;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Rendering;
import org.footwell.web.request.Trees;

/** Worked examples: the requests of the cards, and what the engine answers to them. */
final class Examples {

  /** What a list in an answer shows; curves have hundreds of points, and lists stand in lists. */
  private static final int SHOWN = 3;

  private static final int SHOWN_WITHIN = 2;

  /** An answer with more figures shows one entry of its lists, two of those within. */
  private static final int MANY = 250;

  private final Engine engine = new Engine();

  JsonNode question(Card<?, ?> card) {
    return read(card.example());
  }

  static JsonNode read(String example) {
    try {
      return Trees.MAPPER.readTree(example);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("example " + example, e);
    }
  }

  /** The table that the example of a sweep makes of a calculation. */
  JsonNode sweep(Calculation<?, ?> calculation) {
    Endpoint<?, ?> endpoint = new Endpoint<>(calculation, engine, Duration.ofSeconds(30));
    return Trees.MAPPER.valueToTree(SweepTable.of(endpoint, Rendering.utf8(Sweep.EXAMPLE)));
  }

  /** The answer to the question of a card, its lists cut after the first few entries. */
  JsonNode answer(Card<?, ?> card) {
    return Calculations.all().stream()
        .filter(calculation -> calculation.card().id().equals(card.id()))
        .findFirst()
        .map(this::answer)
        .orElseThrow();
  }

  /** The same of a calculation that is no entry of the list. */
  JsonNode answer(Calculation<?, ?> calculation) {
    JsonNode answer = shortened(whole(calculation), SHOWN);
    return cells(answer).size() > MANY ? shortened(answer, 1) : answer;
  }

  private static JsonNode shortened(JsonNode node, int shown) {
    if (node instanceof ArrayNode list) {
      while (list.size() > shown) {
        list.remove(shown);
      }
    }
    node.forEach(inner -> shortened(inner, node.isArray() ? SHOWN_WITHIN : shown));
    return node;
  }

  private <Q extends Record, R extends Record> JsonNode whole(Calculation<Q, R> calculation) {
    Card<Q, R> card = calculation.card();
    Object example = Endpoint.untyped(card.example().getBytes(StandardCharsets.UTF_8));
    Q request = engine.bind(calculation, example, false);
    return Trees.MAPPER.valueToTree(
        engine.answer(calculation, request, false, Duration.ofSeconds(30)));
  }

  /** The leaves of a request by their dotted names. */
  static Map<String, String> cells(JsonNode question) {
    Map<String, String> cells = new LinkedHashMap<>();
    collect("", question, cells);
    return cells;
  }

  /** Those of some names. */
  static Map<String, String> cells(JsonNode question, Predicate<String> some) {
    Map<String, String> cells = cells(question);
    cells.keySet().removeIf(some.negate());
    return cells;
  }

  private static void collect(String path, JsonNode node, Map<String, String> into) {
    if (node.isObject()) {
      node.properties()
          .forEach(
              entry ->
                  collect(
                      path.isEmpty() ? entry.getKey() : path + "." + entry.getKey(),
                      entry.getValue(),
                      into));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        collect(path + "." + i, node.get(i), into);
      }
    } else {
      into.put(path, node.asText());
    }
  }

  /** One value of a request by its dotted name. */
  JsonNode value(JsonNode question, String name) {
    return question.at("/" + name.replace('.', '/'));
  }

  /** The request as a CSV header and row. */
  static String csv(JsonNode question) {
    Map<String, String> cells = cells(question);
    return String.join(",", cells.keySet()) + "\n" + String.join(",", cells.values()) + "\n";
  }
}
