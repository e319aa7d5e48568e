package org.footwell.calculation.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A sentence taken apart at its placeholders, once for all times it is filled in. */
final class Template {

  /** The two numbers of a sentence that are held against each other. */
  private static final Map<String, String> HELD = Map.of("value", "limit", "limit", "value");

  /** What every remark may have; what they hold is up to it. */
  static final Set<String> COMMON = Set.of("field", "given", "allowed");

  /** A placeholder with its kind, and the unit after it if that is one of differences. */
  private static final Pattern PLACEHOLDER =
      Pattern.compile(
          "\\{(\\w+)(?::(own|field|words))?\\}(?=( dB\\b| percent\\b| degrees\\b| %|°))?");

  /** Smaller decibels, percent and degrees are what calculating leaves of nothing. */
  private static final double NO_DIFFERENCE = 1e-6;

  /**
   * A placeholder.
   *
   * @param before the words before it
   * @param difference whether its unit is one of differences
   * @param unit as it is written behind it, with the blank before it; empty where there is none
   */
  record Slot(
      String before, String name, Arguments.Kind kind, boolean difference, WrittenUnit unit) {}

  private final List<Slot> slots;
  private final String end;
  private final boolean comparing;

  Template(String text) {
    List<Slot> found = new ArrayList<>();
    Matcher placeholder = PLACEHOLDER.matcher(text);
    int from = 0;
    while (placeholder.find()) {
      String kind = placeholder.group(2);
      found.add(
          new Slot(
              text.substring(from, placeholder.start()),
              placeholder.group(1),
              kind == null
                  ? Arguments.Kind.NUMBER
                  : Arguments.Kind.valueOf(kind.toUpperCase(Locale.ROOT)),
              placeholder.group(3) != null,
              WrittenUnit.at(text, placeholder.end())));
      from = placeholder.end() + found.get(found.size() - 1).unit().words().length();
    }
    slots = List.copyOf(found);
    end = text.substring(from);
    comparing =
        HELD.keySet().stream()
            .allMatch(name -> found.stream().anyMatch(s -> s.name().equals(name)));
  }

  /** Its placeholders. */
  List<Slot> slots() {
    return slots;
  }

  /** What fills a placeholder, in a word; what was given and what is allowed come as text. */
  static String kindOf(Slot slot) {
    return slot.name().equals("field")
        ? "field"
        : COMMON.contains(slot.name()) ? "text" : slot.kind().name().toLowerCase(Locale.ROOT);
  }

  /** An argument may be the caller's own words: braces in it are only braces. */
  String filled(
      Function<String, Object> arguments, Function<String, WrittenUnit> units, Reader reader) {
    if (slots.isEmpty()) {
      return end;
    }
    StringBuilder sentence = new StringBuilder(160);
    for (Slot slot : slots) {
      sentence.append(slot.before());
      Object argument = arguments.apply(slot.name());
      assert argument != null : slot.name() + " is not filled in: " + this;
      if (argument instanceof Double number) {
        boolean nothing = slot.difference() && Math.abs(number) < NO_DIFFERENCE;
        Double against = comparing ? against(slot.name(), arguments) : null;
        unit(slot, units).add(nothing ? 0 : number, against, reader, sentence);
      } else if (slot.kind() == Arguments.Kind.NUMBER && argument instanceof List<?> numbers) {
        add(numbers, unit(slot, units), reader, sentence);
      } else if (argument instanceof Exact number) {
        sentence.append(number.said(slot.unit(), reader));
      } else {
        add(said(slot, argument, reader), sentence);
        sentence.append(slot.unit().words());
      }
    }
    return sentence.append(end).toString();
  }

  private static String said(Slot slot, Object argument, Reader reader) {
    return Arguments.said(
        slot.kind() == Arguments.Kind.OWN ? called(argument, reader) : argument, reader);
  }

  /** The caller's own words as they are called where someone reads them. */
  private static Object called(Object own, Reader reader) {
    if (own instanceof List<?> words) {
      return words.stream().map(word -> called(word, reader)).toList();
    }
    return own instanceof String word ? reader.names().apply(word) : own;
  }

  /** The unit of a number: as the sentence says, else as it is an argument. */
  private static WrittenUnit unit(Slot slot, Function<String, WrittenUnit> units) {
    WrittenUnit own = slot.unit().measure() == null ? units.apply(slot.name()) : null;
    return own == null ? slot.unit() : own;
  }

  private static void add(
      List<?> numbers, WrittenUnit unit, Reader reader, StringBuilder sentence) {
    String between = "";
    for (Object number : numbers) {
      sentence.append(between);
      unit.add((Double) number, null, reader, sentence);
      between = ", ";
    }
  }

  /** What a number is held against, or null. */
  private static Double against(String name, Function<String, Object> arguments) {
    String other = HELD.get(name);
    return other == null ? null : (Double) arguments.apply(other);
  }

  /** Adds words; where there are none, the blank before them goes too. */
  private static void add(String words, StringBuilder sentence) {
    int last = sentence.length() - 1;
    if (words != null && words.isEmpty() && last >= 0 && sentence.charAt(last) == ' ') {
      sentence.setLength(last);
    }
    sentence.append(words);
  }

  /** The sentence with the names of its placeholders, without their kinds. */
  @Override
  public String toString() {
    if (slots.isEmpty()) {
      return end;
    }
    StringBuilder text = new StringBuilder();
    slots.forEach(
        slot ->
            text.append(slot.before())
                .append('{')
                .append(slot.name())
                .append('}')
                .append(slot.unit().words()));
    return text.append(end).toString();
  }
}
