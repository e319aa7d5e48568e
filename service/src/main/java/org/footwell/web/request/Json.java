package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

/** How JSON is read and written, strictly. */
public final class Json {

  /** Deepest nesting that is read. */
  public static final int DEEPEST = 50;

  private static final int LONGEST_TEXT = 100_000;

  /** Most answers are shorter. */
  private static final int USUAL_BYTES = 2048;

  private static final JsonFactory WRITING =
      new JsonFactoryBuilder()
          .configure(StreamWriteFeature.USE_FAST_DOUBLE_WRITER, Digits.FAST_WRITER)
          // Money is never written with an exponent.
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .build();

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

  private Json() {}

  public static byte[] bytes(Object value) {
    return bytes(value, Digits.ALL);
  }

  /** A value with its numbers to so many digits. */
  public static byte[] bytes(Object value, Digits digits) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(USUAL_BYTES);
    try (JsonGenerator generator = WRITING.createGenerator(bytes)) {
      new RecordWriter(generator, digits).value(value);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return bytes.toByteArray();
  }
}
