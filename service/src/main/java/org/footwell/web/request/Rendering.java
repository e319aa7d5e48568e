package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.fasterxml.jackson.dataformat.xml.XmlMapper;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Answer;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.CsvCell;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Shown;
import org.footwell.calculation.View;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;

/** Answers in other forms than JSON: a single value, text, CSV, XML. Nothing is computed here. */
public final class Rendering {

  private Rendering() {}

  /** Formats of numbers as they are, which can be asked for with fewer digits. */
  public static final List<Format> OF_NUMBERS = List.of(Format.JSON, Format.CSV, Format.XML);

  /** An answer in one of the formats of its endpoint. */
  public static <Q extends Record, R extends Record> byte[] render(
      Endpoint<Q, R> endpoint,
      Answered<Q, R> answered,
      Format format,
      Digits digits,
      Reader reader) {
    Answer<R> answer = answered.answer();
    View<Q, R> view = endpoint.formats().view(format);
    if (view != null) {
      return view.draw().apply(new Shown<>(answered.request(), answer, reader));
    }
    if (format.equals(Format.JSON)) {
      return endpoint.json(answer, digits);
    }
    if (format.equals(Format.TEXT)) {
      return utf8(TextPage.of(answered, reader));
    }
    JsonNode tree = Trees.of(answer, digits);
    return format.equals(Format.XML) ? xml(tree) : utf8(csv(tree));
  }

  /** One part of an answer as a cell shows it. */
  public static byte[] part(Shape<?> result, Answer<?> answer, String field, Digits digits) {
    return utf8(cell(pick(result, Trees.of(answer, digits), field)));
  }

  /**
   * One part of an answer by its dotted path, which starts in the result, or with findings,
   * verdict, safety or workings. A list crossed without an index gives all its entries; a part that
   * this answer leaves out is empty.
   */
  private static JsonNode pick(Shape<?> result, JsonNode answer, String field) {
    String[] path = field.split("\\.", -1);
    JsonNode here = answer.get("result").has(path[0]) ? answer.get("result") : answer;
    for (int i = 0; i < path.length; i++) {
      JsonNode next = step(here, path[i]);
      if (next == null && (result.has(field) || isOfFinding(path))) {
        return MissingNode.getInstance();
      }
      if (next == null) {
        throw unknown(here, field, path[i]);
      }
      here = next;
    }
    return here;
  }

  /** Whether a path names a part of some finding, which this answer may not have. */
  private static boolean isOfFinding(String[] path) {
    return path.length == 3
        && path[0].equals("findings")
        && path[1].matches("\\d+")
        && Shape.of(Finding.class).has(path[2]);
  }

  private static JsonNode step(JsonNode here, String name) {
    if (!here.isArray()) {
      return here.get(name);
    }
    if (name.matches("\\d{1,6}")) {
      return here.get(Integer.parseInt(name));
    }
    ArrayNode all = Trees.MAPPER.createArrayNode();
    for (JsonNode entry : here) {
      if (entry.has(name)) {
        all.add(entry.get(name));
      }
    }
    return here.isEmpty() || !all.isEmpty() ? all : null;
  }

  private static ProblemException unknown(JsonNode here, String field, String name) {
    List<String> known = new ArrayList<>();
    here.fieldNames().forEachRemaining(known::add);
    if (here.has("result")) {
      here.get("result").fieldNames().forEachRemaining(known::add);
      known.remove("result");
    }
    Faults faults = new Faults();
    faults
        .add(CoreFault.UNKNOWN_FIELD)
        .at("/field")
        .field("field", field)
        .given(field)
        .allowed(
            here.isArray()
                ? Phrase.of(WebWords.INDEX_BELOW).with("limit", here.size())
                : Allowed.fields(known))
        .with("nearest", Names.didYouMean(name, known));
    return ProblemException.invalid(faults);
  }

  /** A value as a cell shows it: no quotes, no line end, entries of a list in one line. */
  static String cell(JsonNode value) {
    if (value.isArray()) {
      List<String> entries = new ArrayList<>();
      value.forEach(entry -> entries.add(cell(entry)));
      return String.join("; ", entries);
    }
    return value.isContainerNode() ? value.toString() : Texts.oneLine(value.asText());
  }

  /** A header and a row: result columns, then the verdict and the codes of the findings. */
  private static String csv(JsonNode answer) {
    List<String> names = new ArrayList<>();
    List<String> cells = new ArrayList<>();
    flatten("", answer.get("result"), names, cells);
    names.add("verdict");
    cells.add(answer.get("verdict").asText());
    names.add("findings");
    List<String> codes = new ArrayList<>();
    answer.get("findings").forEach(finding -> codes.add(finding.get("code").asText()));
    cells.add(String.join(" ", codes));
    StringWriter out = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out)) {
      csv.writeRecord(names).writeRecord(cells);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private static void flatten(String path, JsonNode node, List<String> names, List<String> cells) {
    if (node.isObject()) {
      node.properties()
          .forEach(
              entry ->
                  flatten(
                      path.isEmpty() ? entry.getKey() : path + "." + entry.getKey(),
                      entry.getValue(),
                      names,
                      cells));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        flatten(path + "." + i, node.get(i), names, cells);
      }
    } else {
      names.add(path);
      cells.add(CsvCell.harmless(node.asText()));
    }
  }

  /** Made when first asked for: XML takes long to load and few callers want it. */
  private static final class Xml {
    private static final XmlMapper MAPPER = new XmlMapper();
  }

  private static byte[] xml(JsonNode answer) {
    try {
      return Xml.MAPPER.writer().withRootName("answer").writeValueAsBytes(shown(answer));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The same with what a caller wrote as XML can hold it. */
  private static JsonNode shown(JsonNode node) {
    if (node.isTextual()) {
      return TextNode.valueOf(Texts.shown(node.textValue()));
    }
    if (node instanceof ObjectNode group) {
      group.properties().forEach(entry -> entry.setValue(shown(entry.getValue())));
    } else if (node instanceof ArrayNode list) {
      for (int i = 0; i < list.size(); i++) {
        list.set(i, shown(list.get(i)));
      }
    }
    return node;
  }

  public static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
