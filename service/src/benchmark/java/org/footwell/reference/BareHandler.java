package org.footwell.reference;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.type.LogicalType;
import java.util.Arrays;
import java.util.Locale;
import org.footwell.acoustic.level.SoundLevelRequest;

/**
 * What the service is compared with, frozen on 2026-11-30: a handler that parses the service's own
 * request record as strictly as the service did then, and answers with an object of the same size.
 * Its mapper is a copy, so that what makes the service faster does not make this faster too.
 */
public final class BareHandler {

  private BareHandler() {}

  public static void main(String[] arguments) {
    TutorialServer.start(arguments[0], mapper(), SoundLevelRequest.class, BareHandler::used);
  }

  private static void used(SoundLevelRequest request) {
    if (request.driver().ratedOhm() <= 0) {
      throw new IllegalArgumentException("parsed, and used");
    }
  }

  private static JsonMapper mapper() {
    return JsonMapper.builder(
            JsonFactory.builder()
                .streamReadConstraints(
                    StreamReadConstraints.builder()
                        .maxNestingDepth(50)
                        .maxStringLength(100_000)
                        .maxNumberLength(100)
                        .build())
                .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .configure(
                    StreamWriteFeature.USE_FAST_DOUBLE_WRITER, Runtime.version().feature() < 19)
                .build())
        .propertyNamingStrategy(new Snake())
        .annotationIntrospector(new SmallConstants())
        .defaultPropertyInclusion(
            JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.NON_NULL))
        .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
        .withCoercionConfig(
            LogicalType.Textual,
            textual ->
                textual
                    .setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                    .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                    .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
        .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
        .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
        .enable(DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
        .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
        .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
        .build();
  }

  /** A word begins at each capital. */
  private static final class Snake extends PropertyNamingStrategies.NamingBase {
    private static final long serialVersionUID = 1L;

    @Override
    public String translate(String camel) {
      StringBuilder snake = new StringBuilder();
      for (int i = 0; i < camel.length(); i++) {
        char letter = camel.charAt(i);
        if (Character.isUpperCase(letter)) {
          snake.append('_');
        }
        snake.append(Character.toLowerCase(letter));
      }
      return snake.toString();
    }
  }

  private static final class SmallConstants extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1L;

    @Override
    public String[] findEnumValues(
        MapperConfig<?> config, AnnotatedClass type, Enum<?>[] constants, String[] names) {
      Arrays.setAll(names, i -> constants[i].name().toLowerCase(Locale.ROOT));
      return names;
    }
  }
}
