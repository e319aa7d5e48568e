package org.footwell.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.footwell.web.request.Exchange;

/**
 * Holds one exchange against the contract. A request that was answered must have been one the
 * contract allows, and the answer one that it promises; whatever is refused must be refused as a
 * declared problem.
 */
public final class ContractCheck {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String JSON = "application/json";

  /** Pages for people and the contract itself, which the contract does not describe. */
  private static final String OUTSIDE =
      "/|/codes.*|/openapi.*|/reference/.*|/plan|/plan/.*|/problems/.*";

  private final ContractDocument contract;

  public ContractCheck(ContractDocument contract) {
    this.contract = contract;
  }

  /** A request as it was sent, its body without a byte order mark. */
  public record Asked(String method, URI uri, String mediaType, String body) {

    public Asked {
      body = body.startsWith("\uFEFF") ? body.substring(1) : body;
    }

    /** Names and values of the query, decoded; nothing between two separators is no parameter. */
    List<String[]> query() {
      List<String[]> pairs = new ArrayList<>();
      if (uri.getRawQuery() != null) {
        for (String pair : uri.getRawQuery().split("&+", -1)) {
          String[] sides = pair.split("=", 2);
          if (!pair.isEmpty()) {
            pairs.add(new String[] {decoded(sides[0]), sides.length < 2 ? "" : decoded(sides[1])});
          }
        }
      }
      return pairs;
    }

    private static String decoded(String text) {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }

    boolean has(String name) {
      return query().stream().anyMatch(pair -> pair[0].equals(name));
    }

    boolean textErrors() {
      return query().stream().anyMatch(pair -> pair[0].equals("errors") && pair[1].equals("text"));
    }

    boolean batch() {
      return uri.getPath().endsWith("/batch");
    }

    /** Whether it is answered row by row, each with a problem of its own, and kept by no cache. */
    boolean rows() {
      return batch() || uri.getPath().endsWith("/sweep");
    }
  }

  /** An answer as it came. */
  public record Told(int status, String mediaType, Function<String, String> header, String body) {}

  /** What is not as the contract says. */
  public List<String> faults(Asked asked, Told told) {
    List<String> faults = new ArrayList<>();
    JsonNode path = contract.path(asked.uri().getPath());
    String method = asked.method().equals("HEAD") ? "GET" : asked.method();
    JsonNode operation = path.path(method.toLowerCase(Locale.ROOT));
    boolean notKept = "no-store".equals(told.header().apply("Cache-Control"));
    boolean text = !asked.rows() || told.mediaType().equals("text/plain");
    // Of an address that is too long nothing is read.
    boolean read = told.status() != 414;
    if (asked.textErrors() && notKept && text && read) {
      textError(operation, told, faults);
    } else if (told.status() >= 400) {
      problem(asked, operation, told, faults);
    } else if (asked.method().equals("OPTIONS")) {
      if (told.status() != 204 || told.header().apply("Allow") == null) {
        faults.add("OPTIONS must be answered with 204 and Allow");
      }
    } else if (operation.isMissingNode()) {
      if (!asked.uri().getPath().matches(OUTSIDE)) {
        faults.add("answered, but no operation of the contract");
      }
    } else {
      request(asked, operation, faults);
      answer(asked, operation, told, faults);
    }
    return faults;
  }

  private static void textError(JsonNode operation, Told told, List<String> faults) {
    JsonNode declared = operation.at("/responses/200/content/text~1plain");
    if (!operation.isMissingNode() && declared.isMissingNode()) {
      faults.add("a problem as text is not declared");
    }
    if (told.status() != 200 || !told.mediaType().equals("text/plain")) {
      faults.add("a problem as text must be 200 and text/plain");
    }
  }

  private void problem(Asked asked, JsonNode operation, Told told, List<String> faults) {
    if (!operation.isMissingNode() && !contract.problem(operation, told.status()).isObject()) {
      faults.add("status " + told.status() + " is not declared");
    }
    if (!told.mediaType().equals("application/problem+json")) {
      faults.add("a problem came as " + told.mediaType());
    } else if (!asked.method().equals("HEAD")) {
      JsonNode problem = parsed(told.body(), "the problem", faults);
      faults.addAll(contract.faults(contract.reference("Problem"), problem));
      for (String must : List.of("type", "title", "detail")) {
        if (problem.path(must).asText().isBlank()) {
          faults.add("the problem has no " + must);
        }
      }
      if (problem.path("status").asInt() != told.status()) {
        faults.add("the problem states " + problem.path("status") + ", not " + told.status());
      }
    }
  }

  private void request(Asked asked, JsonNode operation, List<String> faults) {
    for (String[] pair : asked.query()) {
      JsonNode declared = declared(asked, operation, pair[0]);
      if (declared.isMissingNode()) {
        faults.add("query parameter " + pair[0] + " is not declared");
      } else {
        boolean ofAllEntries = pair[0].contains(".*");
        for (String value : ofAllEntries ? pair[1].split(",", -1) : new String[] {pair[1]}) {
          if (!ofAllEntries || !value.isEmpty()) {
            faults.addAll(
                contract.faults(declared.get("schema"), typed(asked, declared, pair[0], value)));
          }
        }
      }
    }
    for (JsonNode parameter : operation.path("parameters")) {
      String name = parameter.path("name").asText();
      boolean inQuery = parameter.path("in").asText().equals("query");
      if (inQuery && parameter.path("required").asBoolean() && !asked.has(name)) {
        faults.add("required query parameter " + name + " is missing, yet it was answered");
      }
    }
    if (operation.has("requestBody")) {
      JsonNode content = operation.at("/requestBody/content").path(asked.mediaType());
      if (content.isMissingNode()) {
        faults.add("content type " + asked.mediaType() + " is not declared for the request");
      } else if (asked.mediaType().equals(JSON) && !asked.batch()) {
        JsonNode body = withoutNulls(parsed(asked.body(), "the request", faults));
        faults.addAll(contract.faults(content.get("schema"), body));
      }
    }
  }

  /** A field that is null is one that is not given. */
  private static JsonNode withoutNulls(JsonNode node) {
    if (node instanceof ObjectNode object) {
      object.properties().removeIf(field -> field.getValue().isNull());
    }
    node.forEach(ContractCheck::withoutNulls);
    return node;
  }

  /** A field of the request that an analysis is about is one of its calculation. */
  private JsonNode declared(Asked asked, JsonNode operation, String name) {
    boolean within = name.startsWith("request.") && has(operation, "request_fields");
    String calculation = asked.uri().getPath().replaceFirst("/[^/]*$", "");
    return within
        ? parameter(contract.path(calculation).path("get"), name.substring("request.".length()))
        : parameter(operation, name);
  }

  private static boolean has(JsonNode operation, String parameter) {
    for (JsonNode one : operation.path("parameters")) {
      if (one.path("name").asText().equals(parameter)) {
        return true;
      }
    }
    return false;
  }

  /** The declared parameter of a name; further entries of a repeated group are as its first. */
  private static JsonNode parameter(JsonNode operation, String name) {
    boolean further = has(operation, "further_entries") || has(operation, "request_fields");
    String first = further ? name.replaceAll("\\.(\\d+|\\*)(?=\\.|$)", ".0") : name;
    for (JsonNode parameter : operation.path("parameters")) {
      if (parameter.path("name").asText().equals(first)) {
        return parameter;
      }
    }
    return operation.path("no such parameter");
  }

  private JsonNode typed(Asked asked, JsonNode parameter, String name, String value) {
    String type = contract.resolved(parameter.get("schema")).path("type").asText();
    List<String> others = asked.query().stream().map(pair -> pair[1]).toList();
    return QueryValue.typed(type, name, value, others);
  }

  private void answer(Asked asked, JsonNode operation, Told told, List<String> faults) {
    JsonNode declared = operation.at("/responses/" + told.status());
    if (declared.isMissingNode()) {
      faults.add("status " + told.status() + " is not declared");
      return;
    }
    declared
        .path("headers")
        .fieldNames()
        .forEachRemaining(
            name -> {
              if (told.header().apply(name) == null) {
                faults.add("header " + name + " is declared but missing");
              }
            });
    if (!declared.has("content") || asked.method().equals("HEAD")) {
      if (!told.body().isEmpty()) {
        faults.add("a body where none is declared");
      }
      return;
    }
    JsonNode content = content(declared.path("content"), told.mediaType());
    if (content.isMissingNode()) {
      faults.add("content type " + told.mediaType() + " is not declared for the answer");
    } else if (asked.batch()) {
      rows(asked, content, told, faults);
    } else if (told.mediaType().equals(JSON) && !asked.has("field")) {
      JsonNode body = parsed(told.body(), "the answer", faults);
      faults.addAll(contract.faults(content.get("schema"), body));
    }
  }

  /** What is declared for a media type, whatever parameters are declared with it. */
  private static JsonNode content(JsonNode declared, String mediaType) {
    for (var type : declared.properties()) {
      if (Exchange.mediaType(type.getKey()).equals(mediaType)) {
        return type.getValue();
      }
    }
    return declared.path(mediaType);
  }

  /** Every row of a batch in JSON is an answer of the calculation or a problem. */
  private void rows(Asked asked, JsonNode content, Told told, List<String> faults) {
    String calculation = asked.uri().getPath().replaceFirst("/batch$", "");
    JsonNode answer =
        contract.path(calculation).at("/post/responses/200/content/application~1json/schema");
    List<JsonNode> rows = new ArrayList<>();
    if (told.mediaType().equals(JSON)) {
      parsed(told.body(), "the answer", faults).forEach(rows::add);
    } else if (told.mediaType().equals("application/x-ndjson")) {
      told.body().lines().forEach(line -> rows.add(parsed(line, "a line", faults)));
    }
    for (JsonNode row : rows) {
      if (told.mediaType().equals(JSON)) {
        for (String name : contract.undeclared(content.at("/schema/items"), row)) {
          faults.add("a row has the undeclared field " + name);
        }
      }
      boolean problem = row.has("status");
      faults.addAll(contract.faults(problem ? contract.reference("Problem") : answer, row));
    }
  }

  private static JsonNode parsed(String json, String what, List<String> faults) {
    try {
      return MAPPER.readTree(json);
    } catch (IOException malformed) {
      faults.add(what + " is not well-formed JSON");
      return MAPPER.nullNode();
    }
  }
}
