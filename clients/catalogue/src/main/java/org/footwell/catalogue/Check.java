package org.footwell.catalogue;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.footwell.catalogue.input.Catalogue;
import org.footwell.catalogue.input.Chunk;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.service.Poster;

/** Has a catalogue checked, a few chunks at a time, and hands the rows on in their order. */
final class Check {

  private final Poster poster;
  private final int chunkRows;
  private final int parallel;

  Check(Poster poster, int chunkRows, int parallel) {
    this.poster = poster;
    this.chunkRows = chunkRows;
    this.parallel = parallel;
  }

  /** What is done with the rows of a chunk. */
  interface Taker {
    void take(List<CheckedRow> rows) throws IOException;
  }

  void run(Catalogue catalogue, Taker taker) throws IOException, CannotRun, InterruptedException {
    if (!catalogue.header().isEmpty()) {
      poster.checkHeader(catalogue.header());
    }
    ExecutorService threads = Executors.newFixedThreadPool(parallel);
    try {
      Queue<Future<List<CheckedRow>>> underWay = new ArrayDeque<>();
      for (Chunk chunk = next(catalogue); chunk != null; chunk = next(catalogue)) {
        Chunk posted = chunk;
        underWay.add(threads.submit(() -> poster.post(posted)));
        // One more than is sent at a time: it waits while the oldest is handed on.
        if (underWay.size() > parallel) {
          taker.take(result(underWay.remove()));
        }
      }
      while (!underWay.isEmpty()) {
        taker.take(result(underWay.remove()));
      }
    } finally {
      threads.shutdownNow();
    }
  }

  private Chunk next(Catalogue catalogue) throws IOException, CannotRun {
    return Chunk.of(catalogue, chunkRows);
  }

  private static List<CheckedRow> result(Future<List<CheckedRow>> posted)
      throws CannotRun, InterruptedException {
    try {
      return posted.get();
    } catch (ExecutionException failure) {
      if (failure.getCause() instanceof CannotRun cannotRun) {
        throw cannotRun;
      }
      throw new IllegalStateException(failure.getCause());
    }
  }
}
