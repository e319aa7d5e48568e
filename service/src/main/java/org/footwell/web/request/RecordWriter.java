package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.IOException;
import java.lang.annotation.Annotation;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Collection;
import java.util.Map;
import org.footwell.calculation.AllDigits;
import org.footwell.calculation.RecordAccess;
import org.footwell.calculation.Series;
import org.footwell.calculation.text.Names;

/**
 * Writes values as JSON, records straight by their components. What is nothing is left out of records and
 * maps. Numbers have so many digits, except those that are copied into a device; money keeps its cents, and
 * whole numbers stay.
 */
class RecordWriter {

  private static final ClassValue<Written> WRITTEN =
      new ClassValue<>() {
        @Override
        protected Written computeValue(Class<?> type) {
          return new Written(type);
        }
      };

  /** How records of a type are written. */
  private static final class Written {
    private final Class<?> type;
    private final RecordAccess access;
    private final Component[] components;

    Written(Class<?> type) {
      this.type = type;
      RecordComponent[] reflected = type.getRecordComponents();
      boolean allDigits = type.isAnnotationPresent(AllDigits.class);
      access = RecordAccess.of(type);
      components = new Component[reflected.length];
      for (int i = 0; i < components.length; i++) {
        components[i] = new Component(reflected[i], allDigits);
      }
    }
  }

  /** A component of a record. */
  protected static final class Component {
    private final SerializableString name;

    /** Whether it is a plain double, which is read without a box. */
    private final boolean isNumber;

    private final boolean allDigits;
    private final RecordComponent reflected;

    /** How its last record was written: nearly always the next is of the same type. */
    private Written last;

    private Component(RecordComponent reflected, boolean allDigits) {
      name = new SerializedString(Names.snake(reflected.getName()));
      isNumber = reflected.getType() == double.class;
      this.allDigits = allDigits;
      this.reflected = reflected;
    }

    /** Whether its numbers are copied into a device. */
    boolean allDigits() {
      return allDigits;
    }

    /** What it is marked with, or null. */
    <A extends Annotation> A mark(Class<A> mark) {
      return reflected.getAccessor().getAnnotation(mark);
    }

    private Written written(Class<?> type) {
      Written how = last;
      if (how == null || how.type != type) {
        how = WRITTEN.get(type);
        last = how;
      }
      return how;
    }
  }

  protected final JsonGenerator out;
  private final Digits digits;

  /** Of a number, made when the first is rounded. */
  private char[] rounded;

  RecordWriter(JsonGenerator out, Digits digits) {
    this.out = out;
    this.digits = digits;
  }

  /**
   * Writes a value: a record, a list, a map, a text, a number, a truth value, a constant, or nothing.
   *
   * @throws IllegalArgumentException if it is none of these
   */
  final void value(Object value) throws IOException {
    value(null, value);
  }

  /**
   * Writes a value of a record.
   *
   * @param of the component it is, or is within; null outside of all records
   */
  private void value(Component of, Object value) throws IOException {
    if (value instanceof String text) {
      out.writeString(text);
    } else if (value instanceof Double number) {
      number(of, number);
    } else if (value instanceof Record record) {
      record(of, record);
    } else if (value instanceof Collection<?> list) {
      out.writeStartArray();
      for (Object entry : list) {
        value(of, entry);
      }
      out.writeEndArray();
    } else if (value instanceof Enum<?> constant) {
      constant(constant);
    } else if (value instanceof Map<?, ?> map) {
      map(of, map);
    } else {
      other(value);
    }
  }

  private void record(Component of, Record record) throws IOException {
    Class<?> type = record.getClass();
    Written how = of == null ? WRITTEN.get(type) : of.written(type);
    out.writeStartObject();
    for (int i = 0; i < how.components.length; i++) {
      Component component = how.components[i];
      if (component.isNumber) {
        out.writeFieldName(name(component));
        number(component, how.access.number(record, i));
        continue;
      }
      Object value = how.access.get(record, i);
      if (value != null) {
        out.writeFieldName(name(component));
        value(component, value);
      }
    }
    out.writeEndObject();
  }

  private void map(Component of, Map<?, ?> map) throws IOException {
    out.writeStartObject();
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      if (entry.getValue() != null) {
        out.writeFieldName((String) entry.getKey());
        value(of, entry.getValue());
      }
    }
    out.writeEndObject();
  }

  private void other(Object value) throws IOException {
    if (value == null) {
      out.writeNull();
    } else if (value instanceof Integer whole) {
      out.writeNumber(whole);
    } else if (value instanceof Boolean truth) {
      out.writeBoolean(truth);
    } else if (value instanceof Long whole) {
      out.writeNumber(whole);
    } else if (value instanceof BigDecimal exact) {
      out.writeNumber(exact);
    } else if (value instanceof BigInteger whole) {
      out.writeNumber(whole);
    } else if (value instanceof Series series) {
      out.writeStartArray();
      for (int i = 0; i < series.size(); i++) {
        out.writeNumber(series.at(i));
      }
      out.writeEndArray();
    } else {
      throw new IllegalArgumentException("no JSON for " + value.getClass());
    }
  }

  /** What a component is called. */
  protected SerializableString name(Component component) {
    return component.name;
  }

  /** Writes one of the values that a component can only have. */
  protected void constant(Enum<?> constant) throws IOException {
    out.writeString(Names.of(constant));
  }

  /**
   * Writes a fractional number.
   *
   * @param of the component it is, or is within; null outside of all records
   */
  protected void number(Component of, double number) throws IOException {
    if (digits.all() || (of != null && of.allDigits)) {
      out.writeNumber(number);
      return;
    }
    if (rounded == null) {
      rounded = new char[Digits.LONGEST];
    }
    out.writeNumber(rounded, 0, digits.put(number, rounded, 0));
  }
}
