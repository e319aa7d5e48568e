package org.footwell.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** A batch of one JSON request a line, answered line by line. */
final class LinesBatch {

  private LinesBatch() {}

  /** Answers each line of a buffered input with a line; empty lines are skipped. */
  static void answer(Endpoint<?, ?> endpoint, InputStream in, FlushingOutput out, int most)
      throws IOException {
    Lines lines = new Lines(in, most);
    while (lines.next()) {
      out.write(
          lines.tooLong()
              ? tooLong(most, lines.number())
              : BatchRow.answer(endpoint, lines.bytes(), lines.number()));
      out.write('\n');
      out.rowDone(out);
    }
    out.flush();
  }

  private static byte[] tooLong(int most, long number) {
    return BatchRow.problem(
        ProblemException.of(ProblemType.TOO_LARGE, "The line is longer than " + most + " bytes."),
        number);
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
