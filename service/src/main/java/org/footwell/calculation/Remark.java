package org.footwell.calculation;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;

/** A finding or a fault in the making: a code, what it is about, and the arguments of its text. */
public final class Remark {

  private static final int SHOWN = 80;

  private final Coded code;
  private final UnaryOperator<String> rebase;
  private final String subject;
  private final Map<String, Object> arguments = new LinkedHashMap<>();
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
    return with("value", number);
  }

  /** The limit it is held against; {@code {limit}} in the text. */
  public Remark limit(double number) {
    this.limit = number;
    return with("limit", number);
  }

  /** What was given, unrounded; {@code {given}} in the text. */
  public Remark given(Object what) {
    boolean endless = what instanceof Double number && number.isInfinite();
    String text = endless ? "a number too large to hold" : String.valueOf(what);
    this.given = text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    return with("given", given);
  }

  /** What is allowed; {@code {allowed}} in the text. */
  public Remark allowed(String what) {
    this.allowed = what;
    return with("allowed", what);
  }

  /** A further argument of the text. */
  public Remark with(String name, Object argument) {
    arguments.put(name, argument);
    return this;
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
    arguments.putIfAbsent(
        "field", where.isEmpty() ? "The request" : where.substring(1).replace('/', '.'));
    return Texts.of(code, arguments);
  }
}
