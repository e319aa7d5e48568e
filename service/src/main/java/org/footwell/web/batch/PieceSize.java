package org.footwell.web.batch;

import java.util.List;
import java.util.concurrent.Callable;

/**
 * How many rows of a table are answered together: so many as take about half a millisecond. Fewer
 * would cost more for handing them over than for answering, and more would leave cores without work
 * where a row is dear.
 */
final class PieceSize {

  private static final long WANTED_NS = 500_000;

  private final int most;

  /** The first row goes alone: nothing is known of it. */
  private volatile int rows = 1;

  /**
   * For one table.
   *
   * @param most rows that are never more
   */
  PieceSize(int most) {
    this.most = most;
  }

  /** How many rows the next piece should have. */
  int rows() {
    return rows;
  }

  /** A piece of so many rows from whose time the next take their size. */
  Callable<List<Part>> timed(int count, Callable<List<Part>> piece) {
    return () -> {
      long begin = System.nanoTime();
      List<Part> answered = piece.call();
      took(count, System.nanoTime() - begin);
      return answered;
    };
  }

  /** Doubles or halves at most: a machine that is busy for a moment must not mislead. */
  void took(int count, long ns) {
    long wanted = WANTED_NS * count / Math.max(1, ns);
    long near = Math.max(rows / 2, Math.min(2L * rows, wanted));
    rows = (int) Math.max(1, Math.min(most, near));
  }
}
