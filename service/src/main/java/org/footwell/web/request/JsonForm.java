package org.footwell.web.request;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.IOException;
import java.lang.annotation.Annotation;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import org.footwell.calculation.AllDigits;
import org.footwell.calculation.RecordAccess;
import org.footwell.calculation.text.Names;

/**
 * How values of a type are written as JSON. What is frequent has a form of its own: the compiler takes each for
 * itself, once and early, in place of one large way through them all.
 */
abstract class JsonForm {

  private static final ClassValue<JsonForm> FORMS =
      new ClassValue<>() {
        @Override
        protected JsonForm computeValue(Class<?> type) {
          if (type.isRecord()) {
            return new OfRecord(type);
          }
          if (type == String.class) {
            return new OfText(type);
          }
          return Collection.class.isAssignableFrom(type) ? new OfList(type) : new OfOther(type);
        }
      };

  private final Class<?> type;

  private JsonForm(Class<?> type) {
    this.type = type;
  }

  static JsonForm of(Object value) {
    return FORMS.get(value == null ? Void.class : value.getClass());
  }

  /**
   * Writes a value.
   *
   * @param of the component it is, or is within; null outside of all records
   */
  abstract void write(RecordWriter writer, Component of, Object value) throws IOException;

  private static final class OfRecord extends JsonForm {
    private final RecordAccess access;
    private final Component[] components;

    private OfRecord(Class<?> type) {
      super(type);
      RecordComponent[] reflected = type.getRecordComponents();
      boolean allDigits = type.isAnnotationPresent(AllDigits.class);
      access = RecordAccess.of(type);
      components = new Component[reflected.length];
      for (int i = 0; i < components.length; i++) {
        components[i] = new Component(reflected[i], allDigits);
      }
    }

    @Override
    void write(RecordWriter writer, Component of, Object value) throws IOException {
      writer.out.writeStartObject();
      for (int i = 0; i < components.length; i++) {
        Component component = components[i];
        if (component.isNumber) {
          writer.name(component);
          writer.number(component, access.number(value, i));
        } else {
          writer.field(component, access.get(value, i));
        }
      }
      writer.out.writeEndObject();
    }
  }

  private static final class OfText extends JsonForm {
    private OfText(Class<?> type) {
      super(type);
    }

    @Override
    void write(RecordWriter writer, Component of, Object value) throws IOException {
      writer.out.writeString((String) value);
    }
  }

  private static final class OfList extends JsonForm {
    private OfList(Class<?> type) {
      super(type);
    }

    @Override
    void write(RecordWriter writer, Component of, Object value) throws IOException {
      writer.out.writeStartArray();
      JsonForm form = null;
      for (Object entry : (Collection<?>) value) {
        if (form == null || entry == null || form.type != entry.getClass()) {
          form = of(entry);
        }
        form.write(writer, of, entry);
      }
      writer.out.writeEndArray();
    }
  }

  private static final class OfOther extends JsonForm {
    private OfOther(Class<?> type) {
      super(type);
    }

    @Override
    void write(RecordWriter writer, Component of, Object value) throws IOException {
      writer.other(of, value);
    }
  }

  /** A component of a record. */
  static final class Component {
    private final SerializableString name;

    /** Whether it is a plain double, which is read without a box. */
    private final boolean isNumber;

    private final boolean allDigits;
    private final RecordComponent reflected;

    /** How its last value was written: nearly always the next is of the same type. */
    private JsonForm last;

    private Component(RecordComponent reflected, boolean allDigits) {
      name = new SerializedString(Names.snake(reflected.getName()));
      isNumber = reflected.getType() == double.class;
      this.allDigits = allDigits;
      this.reflected = reflected;
    }

    SerializableString name() {
      return name;
    }

    /** Whether its numbers are copied into a device. */
    boolean allDigits() {
      return allDigits;
    }

    /** What it is marked with, or null. */
    <A extends Annotation> A mark(Class<A> mark) {
      return reflected.getAccessor().getAnnotation(mark);
    }

    /** How a value of it is written. */
    JsonForm form(Object value) {
      JsonForm form = last;
      if (form == null || form.type != value.getClass()) {
        form = of(value);
        last = form;
      }
      return form;
    }
  }
}
