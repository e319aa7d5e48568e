package org.footwell.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/** JSON as YAML for people: one entry a line, but lists of values and what holds one value only in brackets. */
final class YamlText {

  private static final DumperOptions OPTIONS = new DumperOptions();

  static {
    OPTIONS.setWidth(80);
    OPTIONS.setIndent(2);
  }

  private YamlText() {}

  static String of(JsonNode json) {
    StringWriter text = new StringWriter();
    new Yaml(OPTIONS).serialize(node(json), text);
    return text.toString();
  }

  private static Node node(JsonNode json) {
    return switch (json.getNodeType()) {
      case OBJECT -> mapping(json);
      case ARRAY -> sequence(json);
      case STRING -> text(json.textValue());
      case BOOLEAN -> plain(Tag.BOOL, json);
      case NUMBER -> plain(json.isIntegralNumber() ? Tag.INT : Tag.FLOAT, json);
      default -> plain(Tag.NULL, json);
    };
  }

  private static Node mapping(JsonNode json) {
    List<NodeTuple> entries = new ArrayList<>();
    for (var entry : json.properties()) {
      entries.add(new NodeTuple(text(entry.getKey()), node(entry.getValue())));
    }
    boolean value = json.isEmpty() || (json.size() == 1 && json.iterator().next().isValueNode());
    return new MappingNode(Tag.MAP, entries, value ? FlowStyle.FLOW : FlowStyle.BLOCK);
  }

  private static Node sequence(JsonNode json) {
    List<Node> entries = new ArrayList<>();
    boolean values = true;
    for (JsonNode entry : json) {
      entries.add(node(entry));
      values &= entry.isValueNode();
    }
    return new SequenceNode(Tag.SEQ, entries, values ? FlowStyle.FLOW : FlowStyle.BLOCK);
  }

  private static Node text(String text) {
    ScalarStyle style = text.contains("\n") ? ScalarStyle.LITERAL : ScalarStyle.PLAIN;
    return new ScalarNode(Tag.STR, text, null, null, style);
  }

  private static Node plain(Tag tag, JsonNode json) {
    return new ScalarNode(tag, json.asText(), null, null, ScalarStyle.PLAIN);
  }
}
