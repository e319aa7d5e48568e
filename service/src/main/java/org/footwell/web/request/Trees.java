package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.databind.util.TokenBuffer;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Answers as trees, for forms that go through them more than once; an answer in JSON needs none. */
public final class Trees {

  /** Writes what it is given as answers are written. */
  public static final ObjectMapper MAPPER =
      JsonMapper.builder()
          // Money keeps its cents.
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .addModule(
              new SimpleModule()
                  .addSerializer(Record.class, new Written<>(Record.class))
                  .addSerializer(Enum.class, new Written<>(Enum.class)))
          .build();

  /** Writes values. */
  interface Writing {
    void to(JsonGenerator out) throws IOException;
  }

  private static final class Written<T> extends StdSerializer<T> {
    private static final long serialVersionUID = 1L;

    Written(Class<T> type) {
      super(type);
    }

    @Override
    public void serialize(T value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      new RecordWriter(out, Digits.ALL).value(value);
    }
  }

  private Trees() {}

  /** A value with its numbers to so many digits. */
  static JsonNode of(Object value, Digits digits) {
    return of(out -> new RecordWriter(out, digits).value(value));
  }

  /** What is written. */
  static JsonNode of(Writing writing) {
    try (TokenBuffer buffer = new TokenBuffer(MAPPER, false)) {
      writing.to(buffer);
      return MAPPER.readTree(buffer.asParser());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
