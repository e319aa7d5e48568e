package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.BeanProperty;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.ser.ContextualSerializer;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import org.footwell.calculation.InUnitOf;
import org.footwell.calculation.Shape;
import org.footwell.calculation.UnknownPath;

/** Numbers of an answer that are of whatever quantity its request names, written with the unit of that. */
record NamedQuantity(Record request, TextCell figures) {

  private String written(String field, double number) {
    try {
      String path = (String) Shape.of(request.getClass()).place(field).of(request);
      return figures.figure(path, DoubleNode.valueOf(number));
    } catch (UnknownPath wrong) {
      throw new IllegalStateException(request + " has no " + field, wrong);
    }
  }

  /** Writes one as a text. */
  static final class Serializer extends StdSerializer<Double> implements ContextualSerializer {
    private static final long serialVersionUID = 1L;

    private final String field;

    @SuppressWarnings("unused") // made by the mapper
    Serializer() {
      this(null);
    }

    private Serializer(String field) {
      super(Double.class);
      this.field = field;
    }

    @Override
    public JsonSerializer<?> createContextual(SerializerProvider provider, BeanProperty property) {
      return new Serializer(property.getAnnotation(InUnitOf.class).value());
    }

    @Override
    public void serialize(Double number, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      NamedQuantity written = (NamedQuantity) provider.getAttribute(NamedQuantity.class);
      out.writeString(written.written(field, number));
    }
  }
}
