package org.footwell.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.footwell.calculation.text.Arguments;
import org.footwell.calculation.text.Coded;
import org.footwell.calculation.text.CoreWords;
import org.footwell.calculation.text.Exact;
import org.footwell.calculation.text.Given;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.ToldTo;
import org.footwell.calculation.text.Words;

/** A finding or a fault in the making: a code, what it is about, and the arguments of its text. */
public final class Remark extends Arguments<Remark> {

  private static final int SHOWN = 80;

  private final Coded code;
  private final UnaryOperator<String> rebase;
  private final String subject;
  private String pointer = "";
  private final List<String> others = new ArrayList<>(0);
  private Object given;
  private Phrase allowed;
  private Double value;
  private Double limit;

  Remark(Coded code, UnaryOperator<String> rebase, String subject) {
    this.code = code;
    this.rebase = rebase;
    this.subject = subject;
  }

  @Override
  protected Remark self() {
    return this;
  }

  /** The field it is about, as a JSON Pointer into the request of this calculation. */
  public Remark at(String field) {
    this.pointer = field;
    return this;
  }

  /** All the fields it is about, at least one: what is alike in several places is said once. */
  public Remark at(List<String> fields) {
    others.addAll(fields.subList(1, fields.size()));
    return at(fields.get(0));
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

  /** What was given, unrounded and as it was written; {@code {given}} in the text. */
  public Remark given(Object what) {
    boolean endless = what instanceof Double number && number.isInfinite();
    this.given = endless ? Given.TOO_LARGE : what instanceof Words ? what : asWritten(what);
    return this;
  }

  private static Object asWritten(Object what) {
    return what instanceof Double number ? Exact.given(number) : String.valueOf(what);
  }

  /** The same of numbers whose place does not say what they are. */
  public Remark given(ToldTo what) {
    this.given = what;
    return this;
  }

  /** The same in words of ours, such as a number of entries. */
  public Remark given(Phrase what) {
    this.given = what;
    return this;
  }

  /** The same of a list: how long it is. */
  public Remark givenEntries(int count) {
    return given(Phrase.of(Given.ENTRIES).with("count", count));
  }

  /** What is allowed, in words that follow "must be"; {@code {allowed}} in the text. */
  public Remark allowed(Phrase what) {
    this.allowed = what;
    return this;
  }

  String code() {
    return code.code();
  }

  Verdict level() {
    return ((FindingCode) code).level();
  }

  /** Where it is in the request of its own calculation, the main place first. */
  List<String> pointers() {
    return Stream.concat(Stream.of(pointer), others.stream()).toList();
  }

  /** Whether its arguments are those of its sentence; for assertions. */
  boolean complete(Reader reader) {
    return fill(code, reader);
  }

  Finding finding(Reader reader) {
    assert complete(reader);
    boolean coded = reader.wording() == Reader.Wording.CODES;
    return FindingBuilder.builder()
        .level(level())
        .code(code())
        .text(coded ? "" : sentence(code, reader))
        .advice(coded ? null : advice(code, reader))
        .arguments(coded ? coded() : null)
        .subject(subject)
        .pointer(where())
        .places(others.isEmpty() ? null : places())
        .value(value)
        .limit(limit)
        .build();
  }

  private List<String> places() {
    List<String> places = new ArrayList<>(List.of(where()));
    others.forEach(other -> places.add(rebase.apply(other)));
    return places;
  }

  /** Where it is, in the outermost request. */
  String where() {
    return rebase.apply(pointer);
  }

  /** A fault is about what was sent, which has all its digits. */
  Fault fault(Reader asking) {
    Reader reader = asking.told(Reader.Wording.SENTENCES);
    assert complete(reader);
    String detail = sentence(code, reader);
    return new Fault(where(), code(), detail, said(given(), reader), said(allowed, reader));
  }

  /** The field in the words of a sentence. */
  private Object place() {
    String where = where();
    return where.isEmpty() ? CoreWords.THE_REQUEST : where.substring(1).replace('/', '.');
  }

  @Override
  protected Object argument(String name, Reader reader) {
    Object own = super.argument(name, reader);
    return own != null ? own : common(name, reader);
  }

  private Object common(String name, Reader reader) {
    return switch (name) {
      case "field" -> place();
      case "value" -> value;
      case "limit" -> limit;
      case "given" -> given() instanceof Exact number ? number : said(given(), reader);
      case "allowed" -> said(allowed, reader);
      default -> null;
    };
  }

  /** What was given, shortened when long; of a number its place says what it is. */
  private Object given() {
    if (given instanceof Exact number && number.measure() == null) {
      return number.of(pointer);
    }
    return given instanceof String text && text.length() > SHOWN
        ? text.substring(0, SHOWN) + "…"
        : given;
  }
}
