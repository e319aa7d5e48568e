package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.math.BigDecimal;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Tokens;

/** JSON, piece by piece. */
public final class JsonTokens implements Tokens {

  /** Whoever reads records looks out for fields given twice. */
  private static final JsonFactory FACTORY = Json.limited().build();

  private final JsonParser parser;

  private JsonTokens(JsonParser parser) {
    this.parser = parser;
  }

  /**
   * A record straight from JSON, or null where anything in it is not as it should be.
   *
   * @throws IOException if it is not well-formed
   */
  public static <T extends Record> T read(Shape<T> shape, byte[] json) throws IOException {
    try (JsonParser parser = FACTORY.createParser(json)) {
      return shape.read(new JsonTokens(parser));
    }
  }

  @Override
  public Kind next() throws IOException {
    JsonToken token = parser.nextToken();
    if (token == null) {
      return Kind.END;
    }
    return switch (token) {
      case START_OBJECT -> Kind.GROUP;
      case END_OBJECT -> Kind.GROUP_END;
      case START_ARRAY -> Kind.LIST;
      case END_ARRAY -> Kind.LIST_END;
      case FIELD_NAME -> Kind.NAME;
      case VALUE_NUMBER_INT -> Kind.WHOLE;
      case VALUE_NUMBER_FLOAT -> Kind.FRACTION;
      case VALUE_STRING -> Kind.TEXT;
      case VALUE_TRUE -> Kind.TRUE;
      case VALUE_FALSE -> Kind.FALSE;
      case VALUE_NULL -> Kind.NOTHING;
      default -> throw new IllegalStateException(token.toString());
    };
  }

  @Override
  public String text() throws IOException {
    return parser.getText();
  }

  @Override
  public double number() throws IOException {
    return parser.getDoubleValue();
  }

  @Override
  public int whole() throws IOException {
    return parser.getIntValue();
  }

  @Override
  public BigDecimal exact() throws IOException {
    return parser.getDecimalValue();
  }
}
