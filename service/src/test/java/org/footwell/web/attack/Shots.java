package org.footwell.web.attack;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Shape;
import org.footwell.web.ContractDocument;

/** Every request of an attack by its number: the same number is the same request for ever. */
final class Shots {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String ANY = "{calculation}";
  private static final String JSON = "application/json";

  /** What is searched for long is asked less often, so that an attack is not the waiting for it. */
  private static final String SEARCHING =
      ".*(plan-repair|package-options|fault-finder|plan-curves|tolerance|solve|sweep).*";

  private static final int SELDOM = 10;

  private final long seed;
  private final List<Map.Entry<String, JsonNode>> operations;
  private final Map<String, Card<?, ?>> cards = new TreeMap<>();
  private final Map<String, JsonNode> examples = new TreeMap<>();
  private final List<String> ids;
  private final JsonChange change;
  private final QueryChange queries;

  Shots(ContractDocument contract, long seed) {
    this.seed = seed;
    this.operations = List.copyOf(contract.operations().entrySet());
    for (Calculation<?, ?> calculation : Calculations.all()) {
      cards.put(calculation.card().id(), calculation.card());
      examples.put(calculation.card().id(), json(calculation.card().example()));
    }
    this.ids = List.copyOf(cards.keySet());
    this.change =
        new JsonChange(DeclaredBounds.of(contract.root()), List.copyOf(examples.values()));
    this.queries = new QueryChange();
  }

  private static JsonNode json(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw new AssertionError(text, e);
    }
  }

  Shot shot(long number) {
    Random random = new Random(seed * 1_000_000_007L + number);
    Map.Entry<String, JsonNode> chosen = Nasty.one(operations, random);
    while (chosen.getKey().matches(SEARCHING) && random.nextInt(SELDOM) > 0) {
      chosen = Nasty.one(operations, random);
    }
    String operation = chosen.getKey();
    String method = operation.substring(0, operation.indexOf(' ')).toUpperCase(Locale.ROOT);
    String path = operation.substring(operation.indexOf(' ') + 1);
    String id = path.contains(ANY) ? Nasty.one(ids, random) : path.replaceAll("^/v1/|/.*", "");
    Map<String, String> headers = new LinkedHashMap<>();
    byte[] body = method.equals("POST") ? body(path, id, chosen.getValue(), headers, random) : null;
    // Probes pass over a query, so none of theirs is declared.
    String query =
        !path.startsWith("/v1/")
            ? ""
            : method.equals("POST")
                ? queries.options(chosen.getValue(), random)
                : queries.of(chosen.getValue(), within(path, id), random);
    headers(headers, random);
    String address = address(path.replace(ANY, id), random) + (query.isEmpty() ? "" : "?" + query);
    return new Shot(operation, method(method, random), address, headers, latin(body));
  }

  private static String latin(byte[] bytes) {
    return bytes == null ? null : new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static String method(String usual, Random random) {
    return random.nextInt(40) > 0
        ? usual
        : Nasty.one(
            List.of("HEAD", "OPTIONS", "PUT", "DELETE", "PATCH", "TRACE", "BREW", "get", "GET"),
            random);
  }

  private static String address(String path, Random random) {
    return random.nextInt(40) > 0
        ? path
        : Nasty.one(
            List.of(
                path + "/",
                path.toUpperCase(Locale.ROOT),
                "/" + path,
                path + "/../..",
                path + "%2F",
                path + "%00",
                path + ";a=b",
                path + "x",
                path + "/batch/batch",
                "/v1/" + "a".repeat(9_000),
                path + "%zz",
                "/%2e%2e" + path,
                "*",
                "http://other" + path,
                path + "\u00e4"),
            random);
  }

  /** The request within that of an analysis, as fields of a query. */
  private JsonNode within(String path, String id) {
    return path.contains(ANY) && flat(id) ? examples.get(id) : null;
  }

  private boolean flat(String id) {
    return Shape.of(cards.get(id).request()).flat();
  }

  private byte[] body(
      String path, String id, JsonNode operation, Map<String, String> headers, Random random) {
    List<String> types = new ArrayList<>();
    operation.at("/requestBody/content").fieldNames().forEachRemaining(types::add);
    String type = Nasty.one(types, random);
    headers.put("Content-Type", type.startsWith("multipart") ? type + "; boundary=x-y" : type);
    String text = text(path, id, type, operation, random);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return switch (random.nextInt(60)) {
      case 0, 1, 2, 3 -> Nasty.bytes(bytes, random);
      case 4 -> text.getBytes(StandardCharsets.UTF_16LE);
      case 5 -> ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
      case 6 -> new byte[0];
      case 7 ->
          (" ".repeat(random.nextInt(40) == 0 ? 1_100_000 : 1_000) + text)
              .getBytes(StandardCharsets.UTF_8);
      default -> bytes;
    };
  }

  private String text(String path, String id, String type, JsonNode operation, Random random) {
    if (type.equals("text/csv")) {
      return csv(operation.at("/requestBody/content").path(type).path("example").asText(), random);
    }
    JsonNode request =
        path.contains(ANY)
            ? analysis(path, id, random)
            : examples.get(path.endsWith("/of-plan") ? "plan-review" : id);
    if (type.startsWith("multipart")) {
      return "--x-y\r\nContent-Disposition: form-data; name=\"request\"\r\n\r\n"
          + change.of(request, random)
          + "\r\n--x-y\r\nContent-Disposition: form-data; name=\""
          + (random.nextInt(5) == 0 ? "request" : "x")
          + "\"\r\n\r\nRIFF"
          + Nasty.text(random)
          + "\r\n--x-y--\r\n";
    }
    if (!path.endsWith("/batch")) {
      return change.of(request, random);
    }
    List<String> rows = new ArrayList<>();
    for (int i = random.nextInt(6); i >= 0; i--) {
      rows.add(change.of(request, random));
    }
    return type.equals(JSON)
        ? "[" + String.join(",", rows) + "]"
        : String.join(random.nextInt(20) == 0 ? "\r\n\n" : "\n", rows) + "\n";
  }

  private static String csv(String example, Random random) {
    String[] lines = example.split("\n", -1);
    StringBuilder csv = new StringBuilder(lines[0]).append('\n');
    for (int i = random.nextInt(8); i >= 0; i--) {
      String[] cells = lines[1].split(",", -1);
      for (int j = random.nextInt(3); j > 0; j--) {
        cells[random.nextInt(cells.length)] =
            random.nextBoolean() ? Nasty.number(random) : "\"" + Nasty.text(random) + "\"";
      }
      csv.append(String.join(",", cells)).append(random.nextInt(10) == 0 ? ",\n" : "\n");
    }
    return csv.toString();
  }

  /** A sweep, a solution or a tolerance of a calculation's example, over numbers that it has. */
  private JsonNode analysis(String path, String id, Random random) {
    ObjectNode asked = MAPPER.createObjectNode();
    asked.set("request", examples.get(id));
    List<String> numbers = numbers(id);
    List<String> outputs = Shape.of(cards.get(id).result()).singles();
    String input = numbers.isEmpty() ? "none" : Nasty.one(numbers, random);
    String output = outputs.isEmpty() ? "none" : Nasty.one(outputs, random);
    if (path.endsWith("/solve")) {
      asked.put("input", input).put("from", 1).put("to", 10).put("output", output).put("target", 3);
    } else if (path.endsWith("/sweep")) {
      asked
          .putArray("inputs")
          .addObject()
          .put("path", input)
          .put("from", 1)
          .put("to", 10)
          .put("count", 5);
      asked.putArray("outputs").add(output);
    } else {
      asked.putArray("inputs").addObject().put("path", input).put("plus_minus_percent", 5);
      asked.putArray("outputs").add(output);
      asked.put("sample_count", 128);
    }
    return asked;
  }

  private List<String> numbers(String id) {
    return Shape.of(cards.get(id).request())
        .numbers(MAPPER.convertValue(examples.get(id), Map.class));
  }

  private static void headers(Map<String, String> headers, Random random) {
    if (random.nextInt(10) > 0) {
      return;
    }
    String name =
        Nasty.one(
            List.of(
                "Accept",
                "Accept-Language",
                "Content-Type",
                "Content-Encoding",
                "traceparent",
                "If-None-Match",
                "Origin",
                "Range",
                "X-Forwarded-For",
                "Authorization",
                "Cookie",
                "Expect"),
            random);
    String value =
        Nasty.one(
            List.of(
                "",
                "*/*",
                "*",
                "application/xml",
                "text/csv;q=0.5, */*;q=0",
                "de-AT,de;q=0.9",
                "xx",
                "application/json; charset=latin1",
                "text/plain",
                "gzip",
                "W/\"1\"",
                "\"a",
                "null",
                "00-" + "a".repeat(32) + "-" + "b".repeat(16) + "-01",
                "bytes=0-1",
                "127.0.0.1",
                ";;;,,,===",
                "a".repeat(7_000),
                "ä",
                "q=" + "9".repeat(400)),
            random);
    headers.put(name, value);
  }

  /** Encoded for a query. */
  static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
