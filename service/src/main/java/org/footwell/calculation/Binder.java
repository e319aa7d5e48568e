package org.footwell.calculation;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Form;
import org.footwell.calculation.text.Given;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Quantity;

/** Makes records of untyped input, collecting what does not fit. */
final class Binder {

  private static final int LONGEST_SHOWN = 40;

  /** A number with something behind it, which may be meant as a unit. */
  private static final Pattern NUMBER_AND_UNIT = Pattern.compile("\\d[\\d./ -]*[^\\d./ ,-].*");

  private final boolean cells;
  private final Faults faults;

  Binder(boolean cells, Faults faults) {
    this.cells = cells;
    this.faults = faults;
  }

  Object bind(Node node, Object given, String pointer) {
    return bind(node, given, pointer, pointer);
  }

  /** Where a number stands, and path of the quantity that it is one of. */
  private Object bind(Node node, Object given, String pointer, String of) {
    if (given == null) {
      return null;
    }
    if (node instanceof Node.Group group) {
      return group(group, given, pointer);
    }
    if (node instanceof Node.Repeated repeated) {
      return list(repeated, given, pointer, of);
    }
    return scalar((Node.Scalar) node, given, pointer, of);
  }

  private Object group(Node.Group group, Object given, String pointer) {
    if (!(given instanceof Map<?, ?> fields)) {
      return wrong(group, given, pointer, "");
    }
    refuseUnknown(group, fields, pointer);
    Object[] values = new Object[group.members().size()];
    int i = 0;
    for (Node.Member member : group.members().values()) {
      String name = member.name();
      values[i++] =
          bind(
              member.node(),
              fields.get(name),
              pointer + "/" + name,
              CellTree.quantity(member, fields));
    }
    return group.construct(values);
  }

  /** Adds a fault for each field that the group does not know. */
  void refuseUnknown(Node.Group group, Map<?, ?> fields, String pointer) {
    for (Object key : fields.keySet()) {
      if (!group.members().containsKey(key)) {
        unknown(group, (String) key, pointer);
      }
    }
  }

  private void unknown(Node.Group group, String key, String pointer) {
    String escaped = key.replace("~", "~0").replace("/", "~1");
    String shown =
        escaped.length() <= LONGEST_SHOWN ? escaped : escaped.substring(0, LONGEST_SHOWN) + "…";
    faults
        .add(CoreFault.UNKNOWN_FIELD)
        .at(pointer + "/" + shown)
        .given(key)
        .allowed(Allowed.fields(group.members().keySet()))
        .with("nearest", Names.didYouMean(key, group.members().keySet()));
  }

  private Object list(Node.Repeated repeated, Object given, String pointer, String of) {
    List<?> entries =
        cells && given instanceof Map<?, ?> byIndex ? CellTree.inOrder(byIndex) : null;
    if (given instanceof List<?> list) {
      entries = list;
    }
    if (entries == null) {
      return wrong(repeated, given, pointer, of);
    }
    if (entries.size() > repeated.most()) {
      faults
          .add(CoreFault.NOT_ALLOWED)
          .at(pointer)
          .givenEntries(entries.size())
          .allowed(repeated.allowed());
      return null;
    }
    List<Object> values = new ArrayList<>(entries.size());
    for (int i = 0; i < entries.size(); i++) {
      values.add(bind(repeated.element(), entries.get(i), pointer + "/" + i, of));
    }
    return values;
  }

  private Object scalar(Node.Scalar scalar, Object given, String pointer, String of) {
    Object value = convert(scalar, given, of);
    return value != null ? value : wrong(scalar, given, pointer, of);
  }

  private Object convert(Node.Scalar scalar, Object given, String of) {
    Class<?> type = scalar.type();
    if (type == Series.class) {
      return given instanceof Series
          ? given
          : given instanceof List<?> numbers ? Series.ofNumbers(numbers) : null;
    }
    if (type == Map.class) {
      return given instanceof Map ? given : null;
    }
    if (cells) {
      return given instanceof String text ? Cell.value(scalar, text, of) : null;
    }
    if (type == String.class || type.isEnum()) {
      return given instanceof String text ? Cell.value(scalar, text) : null;
    }
    if (type == Boolean.class) {
      return given instanceof Boolean ? given : null;
    }
    if (!(given instanceof Number number)) {
      return null;
    }
    if (type == Integer.class) {
      return whole(number);
    }
    return type == BigDecimal.class
        ? (Object) new BigDecimal(number.toString())
        : Cell.finite(number.doubleValue());
  }

  /** Some programs write whole numbers as 2.0. */
  private static Integer whole(Number number) {
    double value = number.doubleValue();
    return value == Math.rint(value) && Math.abs(value) <= Integer.MAX_VALUE
        ? (Integer) (int) value
        : null;
  }

  private Object wrong(Node node, Object given, String pointer, String of) {
    Phrase allowed = given instanceof String text ? hinted(node, text, of) : node.allowed();
    faults.add(CoreFault.WRONG_TYPE).at(pointer).given(shown(given)).allowed(allowed);
    return null;
  }

  /** What is allowed, with what would be right, where it is plain what was meant. */
  private Phrase hinted(Node node, String text, String of) {
    if (text.matches("-?\\d+,\\d+")) {
      return Phrase.of(Form.WITH_DECIMAL_POINT).with("allowed", node.allowed());
    }
    if (cells && NUMBER_AND_UNIT.matcher(text).matches() && Quantity.mayHaveUnit(of)) {
      return Phrase.of(Form.WITH_UNIT).with("allowed", node.allowed());
    }
    String plain = text.strip().toLowerCase(Locale.ROOT).replaceFirst("^\\+", "");
    boolean meant =
        cells && node instanceof Node.Scalar scalar && Cell.value(scalar, plain) != null;
    return meant
        ? Phrase.of(Form.WRITTEN_AS).with("allowed", node.allowed()).own("plain", plain)
        : node.allowed();
  }

  private Object shown(Object given) {
    if (given instanceof String text) {
      return cells ? text : '"' + text + '"';
    }
    return given instanceof Map ? Given.GROUP : given instanceof List ? Given.LIST : given;
  }
}
