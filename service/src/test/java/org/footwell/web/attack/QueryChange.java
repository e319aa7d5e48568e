package org.footwell.web.attack;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Queries made of the parameters of an operation, with what they must not be. */
final class QueryChange {

  private static final List<String> OPTIONS =
      List.of(
          "format=csv",
          "format=text",
          "format=xml",
          "format=html",
          "format=svg",
          "format=json",
          "format=none",
          "field=result",
          "field=verdict",
          "field=findings.0.code",
          "field=safety.0",
          "field=%00",
          "field=",
          "workings=true",
          "workings=1",
          "errors=text",
          "errors=problem",
          "lang=de",
          "lang=xx",
          "lang=",
          "columns=verdict",
          "columns=none",
          "separator=semicolon",
          "about=/drivers/sub_left",
          "about=%2F",
          "a=1",
          "=",
          "&&",
          "%zz=1",
          "format=json&format=json");

  /** What stands in a query beside a body; often nothing. */
  String options(JsonNode operation, Random random) {
    List<String> pairs = new ArrayList<>();
    if (random.nextInt(3) == 0) {
      pairs.add(Nasty.one(OPTIONS, random));
    }
    if (random.nextInt(8) == 0) {
      pairs.add(declared(operation, random));
    }
    return String.join("&", pairs);
  }

  private static String declared(JsonNode operation, Random random) {
    List<JsonNode> all = new ArrayList<>();
    operation.path("parameters").forEach(all::add);
    JsonNode one = all.isEmpty() ? operation.path("none") : Nasty.one(all, random);
    JsonNode values = one.at("/schema/enum");
    String value =
        values.size() > 0 ? values.get(random.nextInt(values.size())).asText() : Nasty.text(random);
    return one.path("name").asText("none") + "=" + shortened(value);
  }

  /** The examples of all parameters, up to three of them changed. */
  String of(JsonNode operation, JsonNode within, Random random) {
    List<String> pairs = new ArrayList<>();
    for (JsonNode parameter : operation.path("parameters")) {
      if (parameter.has("example") && parameter.path("in").asText().equals("query")) {
        String name = parameter.path("name").asText();
        boolean ofRequest = name.equals("request_fields") || name.equals("further_entries");
        if (!ofRequest) {
          pairs.add(name + "=" + Shots.encoded(parameter.get("example").asText()));
        }
      }
    }
    if (within != null) {
      flatten("request", within, pairs);
    }
    for (int i = random.nextInt(4); i > 0; i--) {
      change(pairs, operation, random);
    }
    return String.join("&", pairs);
  }

  private static void flatten(String path, JsonNode node, List<String> into) {
    if (node.isValueNode()) {
      into.add(path + "=" + Shots.encoded(node.asText()));
    }
    node.properties()
        .forEach(entry -> flatten(path + "." + entry.getKey(), entry.getValue(), into));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      flatten(path + "." + i, node.get(i), into);
    }
  }

  private static void change(List<String> pairs, JsonNode operation, Random random) {
    int at = pairs.isEmpty() ? -1 : random.nextInt(pairs.size());
    String pair = at < 0 ? "a=1" : pairs.get(at);
    String name = pair.replaceAll("=.*", "");
    switch (at < 0 ? 9 : random.nextInt(10)) {
      case 0 -> pairs.remove(at);
      case 1 -> pairs.add(pair);
      case 2, 3 -> pairs.set(at, name + "=" + Shots.encoded(Nasty.number(random)));
      case 4 -> pairs.set(at, name + "=" + shortened(Nasty.text(random)));
      case 5 -> pairs.set(at, name + ".0=1");
      case 6 ->
          pairs.set(
              at,
              pair.replaceAll(
                  "\\.0", Nasty.one(List.of(".*", ".1", ".99999999999", ".-1", "."), random)));
      case 7 -> pairs.add(declared(operation, random));
      case 8 ->
          pairs.set(
              at,
              pair
                  + Nasty.one(
                      List.of("%", "%f", "%ff", "+", "&", "#x", "\u00e4", "|", "\"<>"), random));
      default -> pairs.add(Nasty.one(OPTIONS, random));
    }
  }

  private static String shortened(String text) {
    return Shots.encoded(text.length() > 2_000 ? text.substring(0, 2_000) : text);
  }
}
