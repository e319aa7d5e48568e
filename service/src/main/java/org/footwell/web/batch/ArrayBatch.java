package org.footwell.web.batch;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.footwell.calculation.text.Phrase;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Json;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;

/** A batch of one JSON array of requests, answered by one array. */
final class ArrayBatch implements AutoCloseable {

  /** Only cuts the array into its entries: what an entry holds is judged when it is answered. */
  private static final JsonFactory CUTTER = Json.factory().build();

  private static final byte[] OPEN = {'['};
  private static final byte[] CLOSE = {']'};

  private final BatchRow<?> row;
  private final AnnouncedInput input;
  private final int most;
  private final RowLimit limit;
  private final JsonParser parser;
  private long entries;

  /**
   * Opens the array.
   *
   * @param most largest entry, bytes
   * @throws ProblemException if the body does not begin with an array, or only after too much else
   */
  ArrayBatch(BatchRow<?> row, AnnouncedInput input, int most) throws IOException {
    this.row = row;
    this.input = input;
    this.most = most;
    limit = new RowLimit(input, most);
    parser = CUTTER.createParser(limit);
    if (!begins()) {
      throw ProblemException.of(ProblemType.UNREADABLE, ProblemWords.NO_ARRAY);
    }
  }

  private boolean begins() throws IOException {
    try {
      return parser.nextToken() == JsonToken.START_ARRAY;
    } catch (JsonProcessingException malformed) {
      return false;
    } catch (RowLimit.Passed passed) {
      throw ProblemException.of(ProblemType.TOO_LARGE, tooLarge());
    }
  }

  private Phrase tooLarge() {
    return Phrase.of(ProblemWords.LARGE_ENTRY).with("most", most);
  }

  /**
   * Answers each entry with an entry. Where the array itself breaks, a last problem says so and the
   * answer is closed properly.
   */
  void answer(Pipeline pipeline) throws IOException {
    JsonPieces pieces = new JsonPieces(row, ArrayBatch::following, pipeline);
    input.beforeWaiting(pieces::flush);
    pipeline.add(() -> List.of(Part.of(OPEN)));
    try {
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        byte[] entry = entry();
        pieces.add(++entries, entry);
        limit.rowDone();
      }
      if (parser.nextToken() != null) {
        brokenOff(pieces, ProblemType.UNREADABLE, Phrase.of(ProblemWords.MORE_AFTER_ARRAY));
      }
    } catch (JsonProcessingException malformed) {
      brokenOff(pieces, ProblemType.UNREADABLE, Endpoint.malformed(malformed));
    } catch (RowLimit.Passed passed) {
      brokenOff(pieces, ProblemType.TOO_LARGE, tooLarge());
    } catch (ProblemException broken) {
      pieces.add(entries + 1, broken);
    }
    pieces.end();
    pipeline.add(() -> List.of(Part.of(CLOSE)));
    pipeline.flush();
  }

  private byte[] entry() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator copy = CUTTER.createGenerator(bytes)) {
      int depth = 0;
      for (JsonToken token = parser.currentToken(); token != null; token = parser.nextToken()) {
        if (token.isNumeric()) {
          // By its letters: what is no number to calculate with is a fault of this entry alone.
          copy.writeNumber(parser.getText());
        } else {
          copy.copyCurrentEvent(parser);
        }
        depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
        if (depth == 0) {
          break;
        }
      }
    }
    return bytes.toByteArray();
  }

  private void brokenOff(JsonPieces pieces, ProblemType type, Phrase why) throws IOException {
    pieces.add(
        entries + 1,
        ProblemException.of(
            type,
            Phrase.of(ProblemWords.ARRAY_BROKEN_OFF)
                .with(
                    "entries",
                    entries == 1
                        ? Phrase.of(ProblemWords.ONE_ENTRY)
                        : Phrase.of(ProblemWords.ENTRIES).with("count", entries))
                .with("why", why)));
  }

  private static List<Part> following(long number, Part entry) {
    return number == 1 ? List.of(entry) : List.of(Part.COMMA, entry);
  }

  @Override
  public void close() throws IOException {
    parser.close();
  }
}
