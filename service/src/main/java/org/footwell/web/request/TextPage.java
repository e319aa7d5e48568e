package org.footwell.web.request;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.footwell.calculation.text.Texts;

/** An answer as plain text for people: verdict, figures and tables, then what explains them. */
final class TextPage {

  private static final int WRAP = 88;

  /** A list of more values is no figure to read in a line. */
  private static final int MOST_IN_CELL = 8;

  private final StringBuilder out = new StringBuilder();

  private TextPage() {}

  static String of(JsonNode answer) {
    TextPage page = new TextPage();
    page.line("verdict: " + answer.get("verdict").asText());
    page.figures("", answer.get("result"));
    page.findings(answer.get("findings"));
    if (answer.has("workings")) {
      page.workings(answer.get("workings"));
    }
    page.cautions(answer.get("safety"));
    return page.out.toString();
  }

  private void findings(JsonNode findings) {
    if (!findings.isEmpty()) {
      line("");
      line("findings");
    }
    for (JsonNode finding : findings) {
      String subject = finding.has("subject") ? Rendering.cell(finding.get("subject")) + ": " : "";
      wrapped(
          "  " + finding.get("level").asText() + ": ",
          subject + Rendering.cell(finding.get("text")) + advice(finding));
    }
  }

  private static String advice(JsonNode finding) {
    return finding.has("advice") ? " " + Rendering.cell(finding.get("advice")) : "";
  }

  private void cautions(JsonNode safety) {
    if (!safety.isEmpty()) {
      line("");
      line("safety");
      safety.forEach(caution -> wrapped("  - ", caution.asText()));
    }
  }

  private void workings(JsonNode steps) {
    line("");
    line("workings");
    for (JsonNode step : steps) {
      List<String> inputs = new ArrayList<>();
      step.get("inputs")
          .properties()
          .forEach(input -> inputs.add(input.getKey() + " = " + people(input.getValue())));
      line(
          "  "
              + (step.has("pointer") ? Rendering.cell(step.get("pointer")) + " " : "")
              + step.get("quantity").asText()
              + " = "
              + step.get("formula").asText()
              + " with "
              + String.join(", ", inputs)
              + " = "
              + people(step.get("value"))
              + " "
              + step.get("unit").asText()
              + " ["
              + step.get("source").asText()
              + "]");
    }
  }

  /** Single figures in two columns, then each list of groups as a table. */
  private void figures(String prefix, JsonNode group) {
    List<String[]> rows = new ArrayList<>();
    group
        .properties()
        .forEach(
            entry -> {
              JsonNode value = entry.getValue();
              if (!value.isContainerNode()) {
                rows.add(new String[] {prefix + entry.getKey(), people(value)});
              } else if (isPlainList(value)) {
                rows.add(new String[] {prefix + entry.getKey(), people(value)});
              }
            });
    if (!rows.isEmpty()) {
      line("");
      table(rows);
    }
    group
        .properties()
        .forEach(
            entry -> {
              JsonNode value = entry.getValue();
              if (value.isObject()) {
                figures(prefix + entry.getKey() + ".", value);
              } else if (value.isArray() && !isPlainList(value)) {
                line("");
                line(prefix + entry.getKey());
                table(rows(value));
              }
            });
  }

  private static boolean isPlainList(JsonNode value) {
    return value.isArray() && (value.isEmpty() || value.get(0).isValueNode());
  }

  private static List<String[]> rows(JsonNode list) {
    Set<String> names = new LinkedHashSet<>();
    list.forEach(entry -> entry.fieldNames().forEachRemaining(names::add));
    List<String[]> rows = new ArrayList<>();
    rows.add(names.toArray(String[]::new));
    for (JsonNode entry : list) {
      rows.add(
          names.stream()
              .map(name -> entry.has(name) ? people(entry.get(name)) : "-")
              .toArray(String[]::new));
    }
    return rows;
  }

  private void table(List<String[]> rows) {
    int[] widths = new int[rows.get(0).length];
    for (String[] row : rows) {
      for (int i = 0; i < row.length; i++) {
        widths[i] = Math.max(widths[i], row[i].length());
      }
    }
    for (String[] row : rows) {
      StringBuilder line = new StringBuilder(" ");
      for (int i = 0; i < row.length; i++) {
        line.append(' ').append(row[i]).append(" ".repeat(widths[i] - row[i].length() + 1));
      }
      line(line.toString().stripTrailing());
    }
  }

  private static String people(JsonNode value) {
    if (isPlainList(value) && value.size() <= MOST_IN_CELL) {
      List<String> values = new ArrayList<>();
      value.forEach(one -> values.add(people(one)));
      return String.join("; ", values);
    }
    if (value.isArray()) {
      return value.size() == 1 ? people(value.get(0)) : value.size() + " entries";
    }
    if (value.isObject()) {
      List<String> parts = new ArrayList<>();
      value.forEach(part -> parts.add(people(part)));
      return String.join(", ", parts);
    }
    return value.isDouble() ? Texts.forPeople(value.doubleValue()) : Rendering.cell(value);
  }

  private void wrapped(String start, String text) {
    StringBuilder line = new StringBuilder(start);
    for (String word : text.split(" ", -1)) {
      if (line.length() > start.length() && line.length() + word.length() > WRAP) {
        line(line.toString().stripTrailing());
        line.setLength(0);
        line.append(" ".repeat(start.length()));
      }
      line.append(word).append(' ');
    }
    line(line.toString().stripTrailing());
  }

  private void line(String text) {
    out.append(text).append('\n');
  }
}
