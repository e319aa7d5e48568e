package org.footwell.calculation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** A finding or a fault in the making: a code, what it is about, and the arguments of its text. */
public final class Remark {

  private static final int SHOWN = 80;

  private final Coded code;
  private final UnaryOperator<String> rebase;
  private final String subject;

  /** Filled in only when the sentence is asked for: most rows of a batch never are. */
  private List<Argument> arguments = List.of();

  private String pointer = "";
  private String given;
  private String allowed;
  private Double value;
  private Double limit;

  Remark(Coded code, UnaryOperator<String> rebase, String subject) {
    this.code = code;
    this.rebase = rebase;
    this.subject = subject;
  }

  /** The field it is about, as a JSON Pointer into the request of this calculation. */
  public Remark at(String field) {
    this.pointer = field;
    return this;
  }

  /** The value found; {@code {value}} in the text. */
  public Remark value(double number) {
    this.value = number;
    return this;
  }

  /** The limit it is held against; {@code {limit}} in the text. */
  public Remark limit(double number) {
    this.limit = number;
    return this;
  }

  /** What was given, unrounded; {@code {given}} in the text. */
  public Remark given(Object what) {
    boolean endless = what instanceof Double number && number.isInfinite();
    String text = endless ? "a number too large to hold" : String.valueOf(what);
    this.given = text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    return this;
  }

  /** What is allowed; {@code {allowed}} in the text. */
  public Remark allowed(String what) {
    this.allowed = what;
    return this;
  }

  /** A further argument of the text. */
  public Remark with(String name, Object argument) {
    if (arguments.isEmpty()) {
      arguments = new ArrayList<>(2);
    }
    arguments.add(new Argument(name, argument));
    return this;
  }

  /** A further argument that is worth making only for a sentence. */
  public Remark with(String name, Supplier<String> argument) {
    return with(name, (Object) argument);
  }

  String code() {
    return code.code();
  }

  Verdict level() {
    return ((FindingCode) code).level();
  }

  /** Whether it, or the nested calculation it comes from, is about this part of the request. */
  boolean isAbout(String part) {
    return within(part, rebase.apply(pointer)) || within(part, rebase.apply(""));
  }

  private static boolean within(String part, String where) {
    return where.equals(part) || where.startsWith(part + "/");
  }

  Finding finding() {
    String where = rebase.apply(pointer);
    return new Finding(level(), code(), text(where), subject, where, value, limit);
  }

  Fault fault() {
    String where = rebase.apply(pointer);
    return new Fault(where, code(), text(where), given, allowed);
  }

  private String text(String where) {
    Map<String, Object> all = new HashMap<>();
    all.put("field", where.isEmpty() ? "The request" : where.substring(1).replace('/', '.'));
    all.put("value", value);
    all.put("limit", limit);
    all.put("given", given);
    all.put("allowed", allowed);
    for (Argument argument : arguments) {
      all.put(argument.name(), argument.now());
    }
    return Texts.of(code, all);
  }

  private record Argument(String name, Object value) {

    Object now() {
      return value instanceof Supplier<?> later ? later.get() : value;
    }
  }
}
