package org.footwell.web.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.footwell.calculation.text.Phrase;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;

/** A batch of one JSON request a line, answered line by line. */
final class LinesBatch {

  private final BatchRow<?> row;
  private final AnnouncedInput input;
  private final int most;

  /**
   * A batch of lines.
   *
   * @param most longest line, bytes
   */
  LinesBatch(BatchRow<?> row, AnnouncedInput input, int most) {
    this.row = row;
    this.input = input;
    this.most = most;
  }

  /** Answers each line with a line; empty lines are skipped. */
  void answer(Pipeline pipeline) throws IOException {
    JsonPieces pieces =
        new JsonPieces(row, (number, answer) -> List.of(answer, Part.LINE_END), pipeline);
    input.beforeWaiting(pieces::flush);
    Lines lines = new Lines(input, most);
    try {
      for (byte[] line = lines.next(); line != null; line = lines.next()) {
        if (lines.tooLong) {
          pieces.add(lines.number, tooLong());
        } else {
          pieces.add(lines.number, line);
        }
      }
    } catch (ProblemException broken) {
      pieces.add(lines.number, broken);
    }
    pieces.flush();
  }

  private ProblemException tooLong() {
    return ProblemException.of(
        ProblemType.TOO_LARGE, Phrase.of(ProblemWords.LONG_LINE).with("most", most));
  }

  /** Lines of bytes with a largest length; of a longer one only that it is too long is known. */
  private static final class Lines {
    private final InputStream in;
    private final int most;
    private final byte[] buffer = new byte[16 * 1024];
    private final ByteArrayOutputStream line = new ByteArrayOutputStream(512);
    private int at;
    private int end;

    /** Of the line that is being read, from 1. */
    private long number;

    private boolean tooLong;

    Lines(InputStream in, int most) {
      this.in = in;
      this.most = most;
    }

    /** The next line that holds anything, or null at the end of the input. */
    byte[] next() throws IOException {
      for (number++; fill(); number++) {
        readLine();
        byte[] bytes = line.toByteArray();
        if (tooLong || !blank(bytes)) {
          return bytes;
        }
      }
      return null;
    }

    private boolean fill() throws IOException {
      if (at == end) {
        at = 0;
        end = Math.max(0, in.read(buffer, 0, buffer.length));
      }
      return end > 0;
    }

    private void readLine() throws IOException {
      line.reset();
      tooLong = false;
      while (fill()) {
        int from = at;
        while (at < end && buffer[at] != '\n') {
          at++;
        }
        tooLong |= line.size() + at - from > most;
        if (!tooLong) {
          line.write(buffer, from, at - from);
        }
        if (at < end) {
          at++;
          return;
        }
      }
    }

    private static boolean blank(byte[] bytes) {
      for (byte b : bytes) {
        if (b != ' ' && b != '\r' && b != '\t') {
          return false;
        }
      }
      return true;
    }
  }
}
