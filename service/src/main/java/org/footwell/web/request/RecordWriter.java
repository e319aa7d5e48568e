package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;
import org.footwell.calculation.Series;
import org.footwell.calculation.text.Names;
import org.footwell.web.request.JsonForm.Component;

/**
 * Writes values as JSON, records straight by their components. What is nothing is left out of records and
 * maps. Numbers have so many digits, except those that are copied into a device; money keeps its cents, and
 * whole numbers stay.
 */
class RecordWriter {

  final JsonGenerator out;
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
    JsonForm.of(value).write(this, null, value);
  }

  /** Writes a component of a record with its name, unless it is nothing. */
  final void field(Component component, Object value) throws IOException {
    if (value != null) {
      name(component);
      component.form(value).write(this, component, value);
    }
  }

  private void map(Component of, Map<?, ?> map) throws IOException {
    out.writeStartObject();
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      if (entry.getValue() != null) {
        out.writeFieldName((String) entry.getKey());
        JsonForm.of(entry.getValue()).write(this, of, entry.getValue());
      }
    }
    out.writeEndObject();
  }

  /**
   * Writes what is neither a record nor a text nor a list.
   *
   * @param of the component it is, or is within; null outside of all records
   */
  final void other(Component of, Object value) throws IOException {
    if (value == null) {
      out.writeNull();
    } else if (value instanceof Double number) {
      number(of, number);
    } else if (value instanceof Enum<?> constant) {
      constant(constant);
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
    } else if (value instanceof Map<?, ?> map) {
      map(of, map);
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

  /** Writes what a component is called. */
  protected void name(Component component) throws IOException {
    out.writeFieldName(component.name());
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
    if (digits.all() || (of != null && of.allDigits())) {
      out.writeNumber(number);
      return;
    }
    if (rounded == null) {
      rounded = new char[Digits.LONGEST];
    }
    out.writeNumber(rounded, 0, digits.put(number, rounded, 0));
  }
}
