package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyName;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.AnnotatedMember;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import com.fasterxml.jackson.databind.util.TokenBuffer;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.footwell.calculation.AllDigits;
import org.footwell.calculation.Called;
import org.footwell.calculation.InUnitOf;
import org.footwell.calculation.text.Names;

/**
 * An answer on its way to a page of text: numbers of records marked so become texts, which no page
 * rounds, constants become the words for them, and fields have the names they are called by.
 */
final class ForPeople extends DeclaredConstants {

  private static final long serialVersionUID = 1L;

  private static final ObjectMapper MAPPER =
      Json.MAPPER.copy().setAnnotationIntrospector(new ForPeople());

  private static final String CALCULATION = "calculation";
  private static final String TITLE = "title";

  /**
   * An answer with the words of a language in it.
   *
   * @param figures writes the numbers of which the request says what they are
   */
  static JsonNode tree(Answered<?, ?> answered, Labels labels, TextCell figures) {
    try (TokenBuffer buffer = new TokenBuffer(MAPPER, false)) {
      MAPPER
          .writer()
          .withAttribute(Labels.class, labels)
          .withAttribute(NamedQuantity.class, new NamedQuantity(answered.request(), figures))
          .writeValue(buffer, answered.answer());
      JsonNode tree = MAPPER.readTree(buffer.asParser());
      for (JsonNode group : tree.findParents(TITLE)) {
        translateTitle((ObjectNode) group, labels);
      }
      return tree;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Where a calculation is named, its title stands beside its id. */
  private static void translateTitle(ObjectNode group, Labels labels) {
    if (group.has(CALCULATION)) {
      String title = group.get(TITLE).asText();
      group.put(TITLE, labels.title(group.get(CALCULATION).asText(), title));
    }
  }

  @Override
  public Object findSerializer(Annotated part) {
    if (part instanceof AnnotatedClass type && type.getRawType().isEnum()) {
      return ConstantSerializer.class;
    }
    if (part.hasAnnotation(InUnitOf.class)) {
      return NamedQuantity.Serializer.class;
    }
    return part instanceof AnnotatedMember member
            && member.getDeclaringClass().isAnnotationPresent(AllDigits.class)
        ? ToStringSerializer.class
        : super.findSerializer(part);
  }

  @Override
  public PropertyName findNameForSerialization(Annotated part) {
    Called called = part.getAnnotation(Called.class);
    return called == null
        ? super.findNameForSerialization(part)
        : PropertyName.construct(called.value());
  }

  /** Writes the word for a constant. */
  private static final class ConstantSerializer extends StdSerializer<Enum<?>> {
    private static final long serialVersionUID = 1L;

    @SuppressWarnings("unused") // made by the mapper
    ConstantSerializer() {
      super(Enum.class, false);
    }

    @Override
    public void serialize(Enum<?> constant, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      Labels labels = (Labels) provider.getAttribute(Labels.class);
      out.writeString(labels.value(Names.of(constant)));
    }
  }
}
