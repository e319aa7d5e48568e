package org.footwell.web.request;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;
import org.footwell.calculation.text.Words;

/**
 * An answer as plain text for people: the verdict, what to do, the figures, then what explains them. No
 * line of a table is wider than {@value #WIDTH} columns: a list with more to say stands entry by entry.
 */
final class TextPage {

  private static final int WIDTH = 100;

  private final StringBuilder out = new StringBuilder();
  private final Reader reader;
  private final TextCell cells;

  private TextPage(Reader reader, Labels labels, Currency currency) {
    this.reader = reader;
    cells = new TextCell(reader, labels, currency);
  }

  /** An answer for a reader; names of the caller stay as they are. */
  static String of(Answered<?, ?> answered, Reader reader) {
    Labels labels = new Labels(reader.language());
    JsonNode answer = ForPeople.tree(answered, labels, new TextCell(reader, labels, null));
    return of(answer, reader, labels);
  }

  static String of(JsonNode answer, Reader reader, Labels labels) {
    TextPage page = new TextPage(reader, labels, currency(answer.get("result")));
    page.line(page.say(TextWords.VERDICT) + ": " + answer.get("verdict").asText());
    page.findings(answer.get("findings"));
    page.group("", answer.get("result"));
    if (answer.has("workings")) {
      page.workings(answer.get("workings"));
    }
    page.cautions(answer.get("safety"));
    return page.out.toString();
  }

  /** All sums of an answer are of one currency, where it names one. */
  private static Currency currency(JsonNode result) {
    JsonNode code = result.findValue("currency");
    return code == null ? null : Currency.getInstance(code.asText());
  }

  private String say(Words words) {
    return Texts.of(words, reader.language());
  }

  private void findings(JsonNode findings) {
    if (!findings.isEmpty()) {
      line("");
      line(say(TextWords.FINDINGS));
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
      line(say(TextWords.SAFETY));
      safety.forEach(caution -> wrapped("  - ", caution.asText()));
    }
  }

  private void workings(JsonNode steps) {
    line("");
    line(say(TextWords.WORKINGS));
    for (JsonNode step : steps) {
      List<String> inputs = new ArrayList<>();
      step.get("inputs")
          .properties()
          .forEach(input -> inputs.add(input.getKey() + " = " + cells.number(input.getValue())));
      String place = step.has("pointer") ? Rendering.cell(step.get("pointer")) + " " : "";
      wrapped(
          "  ",
          place
              + step.get("quantity").asText()
              + " = "
              + step.get("formula").asText()
              + " "
              + say(TextWords.WITH)
              + " "
              + String.join(", ", inputs)
              + " = "
              + cells.number(step.get("value"))
              + " "
              + step.get("unit").asText()
              + " ["
              + step.get("source").asText()
              + "]");
    }
  }

  /** Single figures in two columns, then each list of groups. */
  private void group(String title, JsonNode group) {
    List<String[]> rows = new ArrayList<>();
    for (Map.Entry<String, JsonNode> entry : group.properties()) {
      if (TextCell.isFigure(entry.getValue())) {
        rows.add(
            new String[] {
              cells.label(entry.getKey()), cells.figure(entry.getKey(), entry.getValue())
            });
      }
    }
    if (!rows.isEmpty()) {
      heading(title);
      table(rows, "  ");
    }
    for (Map.Entry<String, JsonNode> entry : group.properties()) {
      JsonNode value = entry.getValue();
      String label = cells.label(entry.getKey());
      String name = title.isEmpty() ? label : title + ": " + label;
      if (value.isObject()) {
        group(name, value);
      } else if (!TextCell.isFigure(value)) {
        heading(name);
        list(value, "  ");
      }
    }
  }

  private void heading(String title) {
    line("");
    if (!title.isEmpty()) {
      line(title);
    }
  }

  /** A table where it is narrow enough, else a paragraph an entry. */
  private void list(JsonNode list, String indent) {
    Set<String> names = new LinkedHashSet<>();
    list.forEach(entry -> entry.fieldNames().forEachRemaining(names::add));
    List<String[]> rows = new ArrayList<>();
    rows.add(names.stream().map(cells::head).toArray(String[]::new));
    for (JsonNode entry : list) {
      rows.add(
          names.stream()
              .map(name -> entry.has(name) ? cells.bare(name, entry.get(name)) : "-")
              .toArray(String[]::new));
    }
    if (Arrays.stream(widths(rows)).map(width -> width + 2).sum() + indent.length() <= WIDTH) {
      table(rows, indent);
    } else {
      list.forEach(entry -> paragraph(entry, indent));
    }
  }

  /** Its first text heads it; all else follows with what it is called, long lists below. */
  private void paragraph(JsonNode entry, String indent) {
    List<String> said = new ArrayList<>();
    List<Map.Entry<String, JsonNode>> lists = new ArrayList<>();
    String head = null;
    for (Map.Entry<String, JsonNode> field : entry.properties()) {
      if (TextCell.isLong(field.getValue())) {
        lists.add(field);
        continue;
      }
      String figure = cells.figure(field.getKey(), field.getValue());
      if (head == null && field.getValue().isTextual()) {
        head = figure;
      } else if (!figure.isEmpty()) {
        said.add(cells.label(field.getKey()) + " " + figure);
      }
    }
    if (head != null) {
      line(indent + head);
    }
    wrapped(indent + (head == null ? "- " : "  "), String.join(", ", said));
    for (Map.Entry<String, JsonNode> below : lists) {
      line(indent + "  " + cells.label(below.getKey()));
      list(below.getValue(), indent + "    ");
    }
  }

  private static int[] widths(List<String[]> rows) {
    int[] widths = new int[rows.get(0).length];
    for (String[] row : rows) {
      for (int i = 0; i < row.length; i++) {
        widths[i] = Math.max(widths[i], row[i].length());
      }
    }
    return widths;
  }

  private void table(List<String[]> rows, String indent) {
    int[] widths = widths(rows);
    for (String[] row : rows) {
      StringBuilder line = new StringBuilder(indent);
      for (int i = 0; i < row.length; i++) {
        line.append(row[i]).append(" ".repeat(widths[i] - row[i].length() + 2));
      }
      line(line.toString().stripTrailing());
    }
  }

  private void wrapped(String start, String text) {
    StringBuilder line = new StringBuilder(start);
    for (String word : text.split(" ", -1)) {
      if (line.length() > start.length() && line.length() + word.length() > WIDTH) {
        line(line.toString().stripTrailing());
        line.setLength(0);
        line.append(" ".repeat(start.length()));
      }
      line.append(word).append(' ');
    }
    line(line.toString().stripTrailing());
  }

  private void line(String text) {
    out.append(text.replace(TextCell.NO_BREAK, ' ')).append('\n');
  }
}
