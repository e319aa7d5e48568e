package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.deser.BeanDeserializerModifier;
import com.fasterxml.jackson.databind.deser.std.DelegatingDeserializer;
import java.io.IOException;

/** Constants by their names as they are: Jackson alone would take them with blanks around as well. */
final class ExactWords extends BeanDeserializerModifier {

  private static final long serialVersionUID = 1L;

  @Override
  public JsonDeserializer<?> modifyEnumDeserializer(
      DeserializationConfig config,
      JavaType type,
      BeanDescription description,
      JsonDeserializer<?> deserializer) {
    return new Exact(deserializer);
  }

  private static final class Exact extends DelegatingDeserializer {

    private static final long serialVersionUID = 1L;

    Exact(JsonDeserializer<?> trimming) {
      super(trimming);
    }

    @Override
    protected JsonDeserializer<?> newDelegatingInstance(JsonDeserializer<?> trimming) {
      return new Exact(trimming);
    }

    @Override
    public Object deserialize(JsonParser parser, DeserializationContext context)
        throws IOException {
      if (parser.hasToken(JsonToken.VALUE_STRING)) {
        String word = parser.getText();
        if (!word.equals(word.trim())) {
          return context.handleWeirdStringValue(handledType(), word, "");
        }
      }
      return super.deserialize(parser, context);
    }
  }
}
