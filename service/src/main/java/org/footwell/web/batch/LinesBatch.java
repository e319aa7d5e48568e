package org.footwell.web.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;

/** A batch of one JSON request a line, answered line by line. */
final class LinesBatch {

  /** Lines that are answered together, and bytes that are enough for that. */
  private static final int PIECE_LINES = 64;

  private static final int PIECE_BYTES = 64 * 1024;

  private final Endpoint<?, ?> endpoint;
  private final AnnouncedInput input;
  private final int most;
  private final Reader reader;
  private final List<Line> piece = new ArrayList<>();
  private int bytes;

  /**
   * A batch of lines.
   *
   * @param most longest line, bytes
   */
  LinesBatch(Endpoint<?, ?> endpoint, AnnouncedInput input, int most, Reader reader) {
    this.reader = reader;
    this.endpoint = endpoint;
    this.input = input;
    this.most = most;
  }

  /** A line that is not empty; {@code bytes} is null where it is too long. */
  private static final class Line {
    private final long number;
    private final byte[] bytes;

    Line(long number, byte[] bytes) {
      this.number = number;
      this.bytes = bytes;
    }
  }

  /** Answers each line with a line; empty lines are skipped. */
  void answer(Pipeline pipeline) throws IOException {
    input.beforeWaiting(
        () -> {
          endPiece(pipeline);
          pipeline.flush();
        });
    Lines lines = new Lines(input, most);
    for (Line line = lines.next(); line != null; line = lines.next()) {
      piece.add(line);
      bytes += line.bytes == null ? 0 : line.bytes.length;
      if (piece.size() == PIECE_LINES || bytes >= PIECE_BYTES) {
        endPiece(pipeline);
      }
    }
    endPiece(pipeline);
    pipeline.flush();
  }

  private void endPiece(Pipeline pipeline) throws IOException {
    if (!piece.isEmpty()) {
      List<Line> whole = List.copyOf(piece);
      piece.clear();
      bytes = 0;
      pipeline.add(() -> answered(whole));
    }
  }

  private List<Part> answered(List<Line> whole) {
    List<Part> answers = new ArrayList<>(2 * whole.size());
    for (Line line : whole) {
      answers.add(
          line.bytes == null
              ? tooLong(line.number)
              : BatchRow.answer(endpoint, line.bytes, line.number, reader));
      answers.add(Part.LINE_END);
    }
    return answers;
  }

  private Part tooLong(long number) {
    return BatchRow.problem(
        ProblemException.of(
            ProblemType.TOO_LARGE, Phrase.of(ProblemWords.LONG_LINE).with("most", most)),
        number,
        reader);
  }

  /** Lines of bytes with a largest length; a longer one is passed over whole. */
  private static final class Lines {
    private final InputStream in;
    private final int most;
    private final byte[] buffer = new byte[16 * 1024];
    private final ByteArrayOutputStream line = new ByteArrayOutputStream(512);
    private int at;
    private int end;
    private long number;
    private boolean tooLong;

    Lines(InputStream in, int most) {
      this.in = in;
      this.most = most;
    }

    /** The next line that holds anything, or null at the end of the input. */
    Line next() throws IOException {
      while (fill()) {
        number++;
        readLine();
        byte[] bytes = line.toByteArray();
        if (tooLong || !blank(bytes)) {
          return new Line(number, tooLong ? null : bytes);
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
