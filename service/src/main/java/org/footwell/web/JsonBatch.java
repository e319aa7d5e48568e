package org.footwell.web;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** Batches in JSON: one request a line, or one array of them. */
final class JsonBatch {

  /** Reads one entry of many: what follows it in the stream is not its business. */
  private static final ObjectReader ENTRY =
      Json.MAPPER.reader().without(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private JsonBatch() {}

  /** Answers each line with a line; empty lines are skipped. */
  static void lines(Endpoint<?, ?> endpoint, InputStream in, FlushingOutput out, int most)
      throws IOException {
    Lines lines = new Lines(new BufferedInputStream(in), most);
    while (lines.next()) {
      out.write(lines.tooLong() ? tooLong(most, lines) : answer(endpoint, lines));
      out.write('\n');
      out.rowDone();
    }
    out.flush();
  }

  private static byte[] answer(Endpoint<?, ?> endpoint, Lines lines) {
    return row(endpoint, lines.bytes(), lines.number());
  }

  private static byte[] tooLong(int most, Lines lines) {
    return problem(
        ProblemException.of(ProblemType.TOO_LARGE, "The line is longer than " + most + " bytes."),
        lines.number());
  }

  /**
   * Answers each entry of an array with an entry. Where the JSON itself breaks, a last problem says
   * so and the answer is closed properly.
   */
  static void array(Endpoint<?, ?> endpoint, InputStream in, FlushingOutput out)
      throws IOException {
    long entry = 0;
    out.write('[');
    try (JsonParser parser = Json.MAPPER.createParser(in)) {
      if (parser.nextToken() != JsonToken.START_ARRAY) {
        throw ProblemException.of(ProblemType.UNREADABLE, "The body must be a JSON array.");
      }
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        JsonNode tree = ENTRY.readTree(parser);
        entry++;
        if (entry > 1) {
          out.write(',');
        }
        out.write(row(endpoint, Json.bytes(tree), entry));
        out.rowDone();
      }
    } catch (JsonProcessingException | ProblemException broken) {
      if (entry > 0) {
        out.write(',');
      }
      ProblemException unreadable =
          ProblemException.of(
              ProblemType.UNREADABLE,
              "The array breaks off after " + entry + " entries: it is not well-formed JSON.");
      out.write(problem(broken instanceof ProblemException ? broken : unreadable, entry + 1));
    }
    out.write(']');
    out.flush();
  }

  private static <R extends Record> byte[] row(Endpoint<?, R> endpoint, byte[] json, long number) {
    try {
      return endpoint.json(endpoint.answer(json, false));
    } catch (RuntimeException failure) {
      return problem(failure, number);
    }
  }

  private static byte[] problem(Exception failure, long number) {
    return Json.bytes(Problems.of(failure, null).atLine(number));
  }

  /** Lines of bytes with a largest length; a longer one is passed over whole. */
  private static final class Lines {
    private final InputStream in;
    private final int most;
    private final ByteArrayOutputStream line = new ByteArrayOutputStream(512);
    private long number;
    private boolean tooLong;

    Lines(InputStream in, int most) {
      this.in = in;
      this.most = most;
    }

    boolean next() throws IOException {
      Optional<Boolean> found;
      do {
        found = readLine();
      } while (found.isPresent() && !found.get());
      return found.isPresent();
    }

    /** Whether the line holds anything, or nothing at the end of the input. */
    private Optional<Boolean> readLine() throws IOException {
      line.reset();
      tooLong = false;
      boolean blank = true;
      int b = in.read();
      if (b < 0) {
        return Optional.empty();
      }
      number++;
      for (; b >= 0 && b != '\n'; b = in.read()) {
        blank &= b == ' ' || b == '\r' || b == '\t';
        if (line.size() < most) {
          line.write(b);
        } else {
          tooLong = true;
        }
      }
      return Optional.of(!blank);
    }

    byte[] bytes() {
      return line.toByteArray();
    }

    long number() {
      return number;
    }

    boolean tooLong() {
      return tooLong;
    }
  }
}
