package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON into maps, lists, texts, numbers and truth values. Money stays exact, and fields given twice are
 * not well-formed.
 */
public class UntypedJson implements AutoCloseable {

  private static final JsonFactory FACTORY =
      Json.limited().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  protected final JsonParser parser;

  UntypedJson(byte[] json) throws IOException {
    parser = FACTORY.createParser(json);
  }

  protected UntypedJson(InputStream json) throws IOException {
    parser = FACTORY.createParser(json);
  }

  /**
   * Whether there is anything to read.
   *
   * @throws com.fasterxml.jackson.core.JsonProcessingException if that is not well-formed
   */
  public final boolean begins() throws IOException {
    return parser.nextToken() != null;
  }

  /**
   * The value that begins here.
   *
   * @throws com.fasterxml.jackson.core.JsonProcessingException if it is not well-formed or something comes
   *     after it
   */
  public final Object whole() throws IOException {
    Object value = value();
    if (parser.nextToken() != null) {
      throw MismatchedInputException.from(parser, Object.class, "more than one value");
    }
    return value;
  }

  protected Object value() throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> object();
      case START_ARRAY -> array();
      case VALUE_STRING -> text(parser.getText());
      case VALUE_NUMBER_INT -> parser.getNumberValue();
      case VALUE_NUMBER_FLOAT -> parser.getDecimalValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_NULL -> null;
      default -> throw new JsonParseException(parser, "unexpected " + parser.currentToken());
    };
  }

  private Map<String, Object> object() throws IOException {
    Map<String, Object> fields = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = text(parser.currentName());
      parser.nextToken();
      fields.put(name, value());
    }
    return fields;
  }

  protected Object array() throws IOException {
    List<Object> entries = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      entries.add(value());
    }
    return entries;
  }

  /** A text or the name of a field, as it is kept. */
  protected String text(String text) {
    return text;
  }

  @Override
  public final void close() throws IOException {
    parser.close();
  }
}
