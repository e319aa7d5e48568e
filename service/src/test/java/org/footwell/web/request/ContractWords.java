package org.footwell.web.request;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.StreamSupport;
import org.footwell.Calculations;
import org.footwell.calculation.Called;
import org.footwell.calculation.Vocabulary;
import org.footwell.parts.plan.AskOfPlan;

/** What people read of the contract, and so has words in every language. */
public final class ContractWords {

  private static final JsonNode CONTRACT = read();

  private ContractWords() {}

  private static JsonNode read() {
    try (InputStream in = ContractWords.class.getResourceAsStream("/contract/openapi-3.0.json")) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode record(String name) {
    return CONTRACT.at("/components/schemas/" + name);
  }

  /** A record and all it refers to. */
  private static Set<String> below(String root) {
    Set<String> found = new TreeSet<>();
    Deque<String> ahead = new ArrayDeque<>(Set.of(root));
    while (!ahead.isEmpty()) {
      String name = ahead.pop();
      if (found.add(name)) {
        record(name).findValuesAsText("$ref").forEach(ref -> ahead.push(last(ref)));
      }
    }
    return found;
  }

  private static String last(String ref) {
    return ref.substring(ref.lastIndexOf('/') + 1);
  }

  private record Place(String record, String field) {}

  /** What each field of a plan means, in English, under the name its translation has. */
  public static Map<String, String> meanings() {
    Map<String, Set<String>> sentences = new HashMap<>();
    Map<Place, String> places = new HashMap<>();
    for (String record : below("VehiclePlan")) {
      for (Map.Entry<String, JsonNode> field : record(record).path("properties").properties()) {
        String sentence = sentence(field.getValue());
        if (!sentence.isEmpty()) {
          sentences.computeIfAbsent(field.getKey(), any -> new HashSet<>()).add(sentence);
          places.put(new Place(record, field.getKey()), sentence);
        }
      }
    }
    Map<String, String> meanings = new TreeMap<>();
    places.forEach(
        (place, sentence) -> {
          String name = place.field();
          boolean common =
              sentences.get(name).size() == 1
                  || Vocabulary.of(name).filter(q -> q.sentence().equals(sentence)).isPresent();
          meanings.put(common ? name : place.record() + "." + name, sentence);
        });
    return meanings;
  }

  /** What is said at the field, else of the record that is there. */
  private static String sentence(JsonNode field) {
    String own = field.path("description").asText();
    String ref = field.path("$ref").asText(field.at("/allOf/0/$ref").asText());
    return own.isEmpty() && !ref.isEmpty() ? record(last(ref)).path("description").asText() : own;
  }

  /** Records that stand in answers that can be had as text. */
  private static Set<String> answered() {
    Set<String> records = new TreeSet<>();
    for (JsonNode path : CONTRACT.get("paths")) {
      JsonNode content = path.at("/post/responses/200/content");
      if (content.has("text/plain")) {
        String answer = last(content.at("/application~1json/schema/$ref").asText());
        JsonNode result = record(answer).at("/properties/result");
        result.findValuesAsText("$ref").forEach(ref -> records.addAll(below(last(ref))));
      }
    }
    return records;
  }

  /** Names of figures and groups in such answers. */
  public static Set<String> labelled() {
    Set<String> names = new TreeSet<>();
    for (String record : answered()) {
      record(record).path("properties").fieldNames().forEachRemaining(names::add);
    }
    Set<Type> seen = new HashSet<>();
    Calculations.all().forEach(one -> addCalled(one.card().result(), seen, names));
    return names;
  }

  /** Adds what fields of a record and of those in it are called instead of by their own names. */
  private static void addCalled(Type type, Set<Type> seen, Set<String> names) {
    if (type instanceof ParameterizedType list) {
      Arrays.stream(list.getActualTypeArguments()).forEach(one -> addCalled(one, seen, names));
    } else if (type instanceof Class<?> record && record.isRecord() && seen.add(type)) {
      for (RecordComponent field : record.getRecordComponents()) {
        Optional.ofNullable(field.getAnnotation(Called.class))
            .ifPresent(called -> names.add(called.value()));
        addCalled(field.getGenericType(), seen, names);
      }
    }
  }

  /** A name without its unit. */
  public static String bare(String name) {
    return Labels.bare(name);
  }

  /** Constants in such answers. */
  public static Set<String> values() {
    Set<String> values = new TreeSet<>();
    for (String record : answered()) {
      for (JsonNode list : record(record).path("properties").findValues("enum")) {
        StreamSupport.stream(list.spliterator(), false)
            .filter(JsonNode::isTextual)
            .forEach(value -> values.add(value.asText()));
      }
    }
    return values;
  }

  /** Ids of calculations whose titles stand in such answers. */
  public static Set<String> titled() {
    Set<String> ids = new TreeSet<>();
    Calculations.all().stream()
        .filter(AskOfPlan.class::isInstance)
        .forEach(calculation -> ids.add(calculation.card().id()));
    return ids;
  }
}
