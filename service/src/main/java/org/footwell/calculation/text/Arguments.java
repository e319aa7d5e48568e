package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What fills the placeholders of a sentence. Every argument has a kind, and none is a piece of
 * English: words of ours are constants that a translation has too.
 *
 * @param <T> whose sentence it is
 */
public abstract class Arguments<T extends Arguments<T>> {

  /** What a placeholder may be filled with, as the template marks it: {@code {names:own}}. */
  enum Kind {
    /** A number, rounded for people; has no mark. */
    NUMBER,
    /** The caller's own words, or several of them. */
    OWN,
    /** A field of a request or a result by its name, or several. */
    FIELD,
    /** Words of ours, which a translation puts into its language. */
    WORDS
  }

  /** One of them; a single value or a list. */
  record Argument(String name, Kind kind, Object value) {}

  private List<Argument> arguments = List.of();

  /** Paths of the quantities that numbers are ones of where their sentence cannot know. */
  private Map<String, String> quantities = Map.of();

  protected Arguments() {}

  protected abstract T self();

  /** A number, rounded for people. */
  public T with(String name, double number) {
    return put(name, Kind.NUMBER, number);
  }

  /** Several numbers, as a list. */
  public T numbers(String name, List<Double> numbers) {
    return put(name, Kind.NUMBER, numbers);
  }

  /** Says that numbers, whose unit no sentence can know, are in the unit of what a path leads to. */
  public T inUnitOf(String path, String... names) {
    quantities = quantities.isEmpty() ? new HashMap<>() : quantities;
    for (String name : names) {
      quantities.put(name, path);
    }
    return self();
  }

  /** A count, or another whole number. */
  public T with(String name, long number) {
    return put(name, Kind.NUMBER, number);
  }

  /** A sum of money, which is not rounded. */
  public T with(String name, BigDecimal sum) {
    return put(name, Kind.NUMBER, sum);
  }

  /** Words of ours. */
  public T with(String name, Words words) {
    return put(name, Kind.WORDS, words);
  }

  /** Words of ours that have arguments themselves. */
  public T with(String name, Phrase phrase) {
    return put(name, Kind.WORDS, phrase);
  }

  /** Several of them, as a list. */
  public T with(String name, List<Phrase> phrases) {
    return put(name, Kind.WORDS, phrases);
  }

  /** The caller's own words, such as the name of a channel, and symbols. */
  public T own(String name, String words) {
    return put(name, Kind.OWN, words);
  }

  /** Numbers that are said as they are written, or what belongs to them. */
  public T own(String name, ToldTo words) {
    return put(name, Kind.OWN, words);
  }

  /** Several of the caller's own names, as a list. */
  public T own(String name, List<String> words) {
    return put(name, Kind.OWN, words);
  }

  /** A field of a request or a result by the name callers know it by. */
  public T field(String name, String field) {
    return put(name, Kind.FIELD, field);
  }

  /** Several fields, as a list. */
  public T fields(String name, List<String> fields) {
    return put(name, Kind.FIELD, fields);
  }

  private T put(String name, Kind kind, Object value) {
    if (arguments.isEmpty()) {
      arguments = new ArrayList<>(2);
    }
    arguments.add(new Argument(name, kind, value));
    return self();
  }

  /** The same for a program: words of ours by their codes, or null where there are none. */
  protected final Map<String, Object> coded() {
    if (arguments.isEmpty()) {
      return null;
    }
    Map<String, Object> coded = new LinkedHashMap<>();
    arguments.forEach(one -> coded.put(one.name(), coded(one.value())));
    return coded;
  }

  private static Object coded(Object argument) {
    if (argument instanceof Phrase phrase) {
      return phrase.byCode();
    }
    if (argument instanceof Words words) {
      return words.code();
    }
    if (argument instanceof ToldTo told) {
      return told.text();
    }
    return argument instanceof List<?> list
        ? list.stream().map(Arguments::coded).toList()
        : argument;
  }

  /** Those given so far. */
  List<Argument> all() {
    return arguments;
  }

  /** The argument of that name, or null. */
  protected Object argument(String name, Reader reader) {
    for (Argument argument : arguments) {
      if (argument.name().equals(name)) {
        return argument.value();
      }
    }
    return null;
  }

  /** The sentence of a code with these arguments, for a reader. */
  protected final String sentence(Coded code, Reader reader) {
    return filled(Texts.sentence(code, reader.language()).text(), reader);
  }

  /** What to do about it, or null. */
  protected final String advice(Coded code, Reader reader) {
    Template advice = Texts.sentence(code, reader.language()).advice();
    return advice == null ? null : filled(advice, reader);
  }

  private String filled(Template template, Reader reader) {
    return template.filled(name -> argument(name, reader), this::unit, reader);
  }

  private WrittenUnit unit(String name) {
    String quantity = quantities.get(name);
    return quantity == null ? null : WrittenUnit.of(quantity);
  }

  /** An argument as it is said, or null. */
  protected static String said(Object argument, Reader reader) {
    if (argument instanceof Phrase phrase) {
      return phrase.said(reader);
    }
    if (argument instanceof Words words) {
      return Texts.of(words, reader.language());
    }
    if (argument instanceof ToldTo told) {
      return told.said(reader);
    }
    if (argument instanceof List<?> list) {
      return list.stream().map(one -> said(one, reader)).collect(Collectors.joining(", "));
    }
    return Texts.forPeople(argument, Texts.DIGITS, reader.language());
  }

  /**
   * Whether these are what the sentence of a code leaves open, no more and no less; for assertions.
   *
   * @throws AssertionError saying what is not
   */
  protected final boolean fill(Coded code, Reader reader) {
    List<Template.Slot> slots = Texts.sentence(code, reader.language()).slots();
    for (Template.Slot slot : slots) {
      boolean given = argument(slot.name(), reader) != null;
      boolean fits =
          Template.COMMON.contains(slot.name())
              || all().stream()
                  .allMatch(one -> !one.name().equals(slot.name()) || one.kind() == slot.kind());
      if (!given || !fits) {
        throw new AssertionError(
            code.key() + ": " + slot.name() + " must be " + slot.kind() + ", not " + all());
      }
    }
    for (Argument argument : all()) {
      if (slots.stream().noneMatch(slot -> slot.name().equals(argument.name()))) {
        throw new AssertionError(code.key() + " has no place for " + argument);
      }
    }
    return true;
  }
}
