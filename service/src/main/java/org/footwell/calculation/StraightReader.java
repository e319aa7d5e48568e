package org.footwell.calculation;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Tokens.Kind;

/**
 * Reads a record straight from a text, as nearly all are: as soon as anything is not as it should be it gives
 * up, and {@link Binder} finds every fault.
 */
final class StraightReader {

  /** Stands for what cannot be read this way. */
  private static final Object NOT_READ = new Object();

  private static final int MOST_FIELDS = Long.SIZE;

  private final Tokens from;

  private StraightReader(Tokens from) {
    this.from = from;
  }

  /**
   * The record, or null where it cannot be read this way.
   *
   * @throws IOException if the text is not well-formed
   */
  static Object read(Node.Group group, Tokens from) throws IOException {
    StraightReader reader = new StraightReader(from);
    Object read = reader.value(group, from.next());
    return read == NOT_READ || from.next() != Kind.END ? null : read;
  }

  private Object value(Node node, Kind kind) throws IOException {
    if (node instanceof Node.Scalar scalar) {
      return single(scalar, kind);
    }
    if (node instanceof Node.Group group) {
      return kind == Kind.GROUP ? group(group) : NOT_READ;
    }
    return kind == Kind.LIST ? list(((Node.Repeated) node).element()) : NOT_READ;
  }

  private Object group(Node.Group group) throws IOException {
    Object[] values = new Object[group.inOrder().size()];
    long given = 0;
    if (values.length > MOST_FIELDS) {
      return NOT_READ;
    }
    for (Kind kind = from.next(); kind == Kind.NAME; kind = from.next()) {
      Node.Member member = group.members().get(from.text());
      if (member == null) {
        return NOT_READ;
      }
      int at = member.read().at();
      if ((given & (1L << at)) != 0) {
        return NOT_READ;
      }
      given |= 1L << at;
      Kind value = from.next();
      values[at] = value == Kind.NOTHING ? null : value(member.node(), value);
      if (values[at] == NOT_READ) {
        return NOT_READ;
      }
    }
    return group.construct(values);
  }

  private Object list(Node element) throws IOException {
    List<Object> entries = new ArrayList<>();
    for (Kind kind = from.next(); kind != Kind.LIST_END; kind = from.next()) {
      Object entry = kind == Kind.NOTHING ? null : value(element, kind);
      if (entry == NOT_READ) {
        return NOT_READ;
      }
      entries.add(entry);
    }
    return entries;
  }

  private Object single(Node.Scalar scalar, Kind kind) throws IOException {
    Object value =
        switch (kind) {
          case TEXT -> text(scalar);
          case WHOLE -> scalar.isWhole() ? (Object) from.whole() : number(scalar);
          case FRACTION -> scalar.isWhole() ? null : number(scalar);
          case TRUE, FALSE -> scalar.type() == Boolean.class ? kind == Kind.TRUE : null;
          default -> null;
        };
    return value == null ? NOT_READ : value;
  }

  private Object text(Node.Scalar scalar) throws IOException {
    return scalar.type() == String.class ? from.text() : scalar.constants().get(from.text());
  }

  /** A number that no double can hold is infinite, and its bounds refuse it; nothing has no sign. */
  private Object number(Node.Scalar scalar) throws IOException {
    if (scalar.type() == BigDecimal.class) {
      return from.exact();
    }
    return scalar.isFractional() ? (Object) (from.number() + 0.0) : null;
  }
}
