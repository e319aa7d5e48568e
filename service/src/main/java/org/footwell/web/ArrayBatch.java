package org.footwell.web;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import java.io.IOException;
import java.io.InputStream;

/** A batch of one JSON array of requests, answered by one array. */
final class ArrayBatch implements AutoCloseable {

  /** Reads one entry of many: what follows it in the stream is not its business. */
  private static final ObjectReader ENTRY =
      Json.MAPPER.reader().without(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private final RowLimit limit;
  private final JsonParser parser;
  private long entries;

  /**
   * Opens the array.
   *
   * @param most largest entry, bytes
   * @throws ProblemException if the body does not begin with an array
   */
  ArrayBatch(InputStream in, int most) throws IOException {
    limit = new RowLimit(in, most);
    parser = Json.MAPPER.createParser(limit);
    if (!begins()) {
      throw ProblemException.of(ProblemType.UNREADABLE, "The body must be a JSON array.");
    }
  }

  private boolean begins() throws IOException {
    try {
      return parser.nextToken() == JsonToken.START_ARRAY;
    } catch (JsonProcessingException malformed) {
      return false;
    }
  }

  /**
   * Answers each entry with an entry. Where the array itself breaks, a last problem says so and the
   * answer is closed properly.
   */
  void answer(Endpoint<?, ?> endpoint, FlushingOutput out) throws IOException {
    out.write('[');
    try {
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        JsonNode entry = ENTRY.readTree(parser);
        write(out, BatchRow.answer(endpoint, Json.bytes(entry), entries + 1));
        limit.rowDone();
        out.rowDone(out);
      }
    } catch (JsonProcessingException malformed) {
      write(out, brokenOff(ProblemType.UNREADABLE, "it is not well-formed JSON"));
    } catch (RowLimit.Passed passed) {
      write(out, brokenOff(ProblemType.TOO_LARGE, passed.getMessage()));
    }
    out.write(']');
    out.flush();
  }

  private void write(FlushingOutput out, byte[] entry) throws IOException {
    if (entries++ > 0) {
      out.write(',');
    }
    out.write(entry);
  }

  private byte[] brokenOff(ProblemType type, String why) {
    return BatchRow.problem(
        ProblemException.of(
            type, "The array breaks off after " + entries + " entries: " + why + "."),
        entries + 1);
  }

  @Override
  public void close() throws IOException {
    parser.close();
  }
}
