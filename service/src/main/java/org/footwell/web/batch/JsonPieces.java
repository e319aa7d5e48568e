package org.footwell.web.batch;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Rows of a batch in JSON on their way, several together. */
final class JsonPieces {

  private static final int MOST_ROWS = 64;
  private static final int MOST_BYTES = 64 * 1024;

  /** How the answers of rows are put between each other. */
  interface Framing {
    List<Part> of(long number, Part row);
  }

  private final BatchRow<?> row;
  private final Framing framing;
  private final Pipeline pipeline;
  private final PieceSize size = new PieceSize(MOST_ROWS);
  private final List<Supplier<List<Part>>> piece = new ArrayList<>();
  private int bytes;

  JsonPieces(BatchRow<?> row, Framing framing, Pipeline pipeline) {
    this.row = row;
    this.framing = framing;
    this.pipeline = pipeline;
  }

  /** Adds a request. */
  void add(long number, byte[] json) throws IOException {
    piece.add(() -> framing.of(number, row.answer(json, number)));
    bytes += json.length;
    if (piece.size() >= size.rows() || bytes >= MOST_BYTES) {
      end();
    }
  }

  /** Adds a problem where there is no request. */
  void add(long number, Exception problem) throws IOException {
    end();
    pipeline.add(() -> framing.of(number, row.problem(problem, number)));
  }

  /** Sends on what is there. */
  void end() throws IOException {
    if (!piece.isEmpty()) {
      List<Supplier<List<Part>>> whole = List.copyOf(piece);
      piece.clear();
      bytes = 0;
      pipeline.add(size.timed(whole.size(), () -> answered(whole)));
    }
  }

  /** The same, and waits until it is on its way to the caller. */
  void flush() throws IOException {
    end();
    pipeline.flush();
  }

  private static List<Part> answered(List<Supplier<List<Part>>> whole) {
    List<Part> parts = new ArrayList<>(2 * whole.size());
    whole.forEach(one -> parts.addAll(one.get()));
    return parts;
  }
}
