package org.footwell.calculation;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.footwell.recording.DescribedWav;
import org.footwell.recording.Wav;
import org.footwell.recording.WavReader;

/**
 * Requests that a calculation answers, each with its workings: its example, those that drive its codes
 * or stand beside them for their workings, and some of all these with numbers drawn anew.
 */
final class AnsweredRequests {

  /** A request with its answer. */
  record Answered(Record request, Answer<?> answer) {}

  /** A request as a file has it, with the recordings that go with it. */
  private record Written(JsonNode request, JsonNode files) {

    static Written of(JsonNode content, Card<?, ?> card) {
      return content.has("request") && !Shape.of(card.request()).has("request")
          ? new Written(content.get("request"), content.path("files"))
          : new Written(content, MissingNode.getInstance());
    }
  }

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path RESOURCES = Path.of("src/test/resources");

  /** Tries for each request that is wanted: many numbers drawn do not go together. */
  private static final int TRIES = 8;

  private static final double DRAWN_ANEW = 0.25;
  private static final double FARTHEST = 1.25;

  private final Engine engine = new Engine();
  private final Random random = new Random(1);

  /**
   * All of a calculation.
   *
   * @param drawn how many requests with numbers drawn anew there are at most
   */
  <Q extends Record, R extends Record> List<Answered> of(Calculation<Q, R> calculation, int drawn)
      throws IOException {
    List<Written> written = written(calculation.card());
    List<Answered> all = new ArrayList<>();
    written.forEach(one -> add(calculation, one, all));
    int answered = all.size();
    for (int i = 0; i < TRIES * drawn && all.size() < answered + drawn; i++) {
      Written one = written.get(i % written.size());
      if (one.files().isEmpty()) {
        JsonNode request = one.request().deepCopy();
        drawAnew(calculation.card(), request);
        add(calculation, new Written(request, one.files()), all);
      }
    }
    return all;
  }

  private static List<Written> written(Card<?, ?> card) throws IOException {
    List<Written> all = new ArrayList<>(List.of(Written.of(JSON.readTree(card.example()), card)));
    for (String kind : List.of("codes", "workings")) {
      Path some = RESOURCES.resolve(kind).resolve(card.id());
      if (Files.isDirectory(some)) {
        try (Stream<Path> files = Files.list(some)) {
          for (Path file :
              files.filter(one -> one.toString().endsWith(".json")).sorted().toList()) {
            all.add(Written.of(JSON.readTree(file.toFile()), card));
          }
        }
      }
    }
    return all;
  }

  private <Q extends Record, R extends Record> void add(
      Calculation<Q, R> calculation, Written one, List<Answered> into) {
    try {
      Map<String, Object> document = map(one.request());
      place(document, one.files());
      Q request = engine.checked(calculation.card().request(), document);
      Answer<R> answer = engine.answer(calculation, request, true, Duration.ofSeconds(60));
      into.add(new Answered(request, answer));
    } catch (Refused | Wav.Unreadable refused) {
      // Such requests have no workings.
    }
  }

  /** Puts samples in place of the names of recordings. */
  @SuppressWarnings("unchecked") // maps of JSON have texts for keys
  private static void place(Object node, JsonNode files) throws Wav.Unreadable {
    if (node instanceof List<?> list) {
      for (Object entry : list) {
        place(entry, files);
      }
    } else if (node instanceof Map<?, ?> map) {
      Map<String, Object> fields = (Map<String, Object>) map;
      if (fields.get("wav") instanceof String name && files.has(name)) {
        WavReader reader = new WavReader();
        reader.accept(ByteBuffer.wrap(DescribedWav.of(files.get(name).asText())));
        Wav wav = reader.finish();
        fields.remove("wav");
        int channel = fields.remove("channel") instanceof Integer given ? given : 0;
        if (channel < wav.channels().size()) {
          fields.put("samples", wav.channels().get(channel));
          fields.put("rate_hz", wav.rateHz());
        }
      }
      for (Object value : map.values()) {
        place(value, files);
      }
    }
  }

  private void drawAnew(Card<?, ?> card, JsonNode request) {
    Shape<?> shape = Shape.of(card.request());
    Map<String, Object> document = map(request);
    for (String path : shape.numbers(document)) {
      Place place = place(shape, path, document);
      if (place.isFractional() && random.nextDouble() < DRAWN_ANEW) {
        JsonPointer pointer = JsonPointer.compile(place.pointer());
        double drawn =
            request.at(pointer).asDouble() * Math.pow(FARTHEST, 2 * random.nextDouble() - 1);
        JsonNode around = request.at(pointer.head());
        if (around instanceof ObjectNode fields) {
          fields.put(pointer.last().getMatchingProperty(), drawn);
        } else {
          ((ArrayNode) around).set(pointer.last().getMatchingIndex(), drawn);
        }
      }
    }
  }

  private static Place place(Shape<?> shape, String path, Map<String, Object> document) {
    try {
      return shape.place(path, document);
    } catch (UnknownPath unknown) {
      throw new AssertionError(path, unknown);
    }
  }

  private static Map<String, Object> map(JsonNode request) {
    return JSON.convertValue(request, new TypeReference<Map<String, Object>>() {});
  }
}
