package org.footwell.web;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import java.io.IOException;

/** A batch of one JSON array of requests, answered by one array. */
final class ArrayBatch implements AutoCloseable {

  /** Reads one entry of many: what follows it in the stream is not its business. */
  private static final ObjectReader ENTRY =
      Json.MAPPER.reader().without(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private final Endpoint<?, ?> endpoint;
  private final AnnouncedInput input;
  private final RowLimit limit;
  private final JsonParser parser;
  private long entries;

  /**
   * Opens the array.
   *
   * @param most largest entry, bytes
   * @throws ProblemException if the body does not begin with an array
   */
  ArrayBatch(Endpoint<?, ?> endpoint, AnnouncedInput input, int most) throws IOException {
    this.endpoint = endpoint;
    this.input = input;
    limit = new RowLimit(input, most);
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
  void answer(Pipeline pipeline) throws IOException {
    input.beforeWaiting(pipeline::flush);
    pipeline.add(() -> Rendering.utf8("["));
    try {
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        byte[] entry = Json.bytes(ENTRY.<JsonNode>readTree(parser));
        long number = ++entries;
        pipeline.add(() -> following(number, BatchRow.answer(endpoint, entry, number)));
        limit.rowDone();
      }
    } catch (JsonProcessingException malformed) {
      brokenOff(pipeline, ProblemType.UNREADABLE, "it is not well-formed JSON");
    } catch (RowLimit.Passed passed) {
      brokenOff(pipeline, ProblemType.TOO_LARGE, passed.getMessage());
    }
    pipeline.add(() -> Rendering.utf8("]"));
    pipeline.flush();
  }

  private void brokenOff(Pipeline pipeline, ProblemType type, String why) throws IOException {
    byte[] problem = brokenOff(type, why);
    long number = entries + 1;
    pipeline.add(() -> following(number, problem));
  }

  private static byte[] following(long number, byte[] entry) {
    if (number == 1) {
      return entry;
    }
    byte[] withComma = new byte[entry.length + 1];
    withComma[0] = ',';
    System.arraycopy(entry, 0, withComma, 1, entry.length);
    return withComma;
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
