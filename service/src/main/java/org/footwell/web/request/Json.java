package org.footwell.web.request;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.PropertyNamingStrategy;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.util.TokenBuffer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.footwell.calculation.text.Names;

/** How JSON is read and written: strictly, and with one mapper for all. */
public final class Json {

  /** Deepest nesting that is read. */
  public static final int DEEPEST = 50;

  /** Java names become JSON names by the one rule of the house. */
  public static final PropertyNamingStrategy NAMING = new SnakeCase();

  private static final class SnakeCase extends PropertyNamingStrategies.NamingBase {
    private static final long serialVersionUID = 1L;

    @Override
    public String translate(String camel) {
      return Names.snake(camel);
    }
  }

  private static final int LONGEST_TEXT = 100_000;

  /** A factory of parsers that read UTF-8 and nothing else. */
  public static JsonFactoryBuilder factory() {
    JsonFactoryBuilder factory = new JsonFactoryBuilder();
    factory.disable(JsonFactory.Feature.CHARSET_DETECTION);
    return factory.inputDecorator(new Utf8Only());
  }

  /** The same, of what callers may send. */
  static JsonFactoryBuilder limited() {
    return factory()
        .streamReadConstraints(
            StreamReadConstraints.builder()
                .maxNestingDepth(DEEPEST)
                .maxStringLength(LONGEST_TEXT)
                .maxNumberLength(100)
                .build())
        .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER);
  }

  public static final ObjectMapper MAPPER =
      JsonMapper.builder(
              limited()
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .configure(StreamWriteFeature.USE_FAST_DOUBLE_WRITER, Digits.FAST_WRITER)
                  .build())
          .propertyNamingStrategy(NAMING)
          .annotationIntrospector(new DeclaredConstants())
          .defaultPropertyInclusion(
              JsonInclude.Value.construct(
                  JsonInclude.Include.NON_NULL, JsonInclude.Include.NON_NULL))
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          // Money keeps its cents and is never written with an exponent.
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .build();

  private Json() {}

  public static byte[] bytes(Object value) {
    return bytes(MAPPER.writer(), value, Digits.ALL);
  }

  /** A value with its numbers to so many digits. */
  public static byte[] bytes(ObjectWriter writer, Object value, Digits digits) {
    try {
      if (digits.all()) {
        return writer.writeValueAsBytes(value);
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (JsonGenerator generator = new RoundedNumbers(writer.createGenerator(bytes), digits)) {
        writer.writeValue(generator, value);
      }
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The same as a tree. */
  static JsonNode tree(Object value, Digits digits) {
    if (digits.all()) {
      return MAPPER.valueToTree(value);
    }
    try (TokenBuffer tokens = new TokenBuffer(MAPPER, false)) {
      MAPPER.writeValue(new RoundedNumbers(tokens, digits), value);
      return MAPPER.readTree(tokens.asParser());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
