package org.footwell.web.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.FutureTask;
import org.footwell.calculation.text.Reader;

/**
 * Pieces of a batch answered on all cores and written in order. Reading and writing stay with the
 * thread of the request, which answers a piece itself rather than wait for it; when the caller reads slowly,
 * writing waits, and with it everything else.
 */
final class Pipeline {

  private final ExecutorService workers;
  private final int most;
  private final OutputStream out;
  private final Told told;
  private final Deque<FutureTask<List<Part>>> underWay = new ArrayDeque<>();

  /**
   * A pipeline into an output.
   *
   * @param most how many pieces may be under way at once
   */
  Pipeline(ExecutorService workers, int most, OutputStream out, Reader reader) {
    this.workers = workers;
    this.most = most;
    this.out = out;
    this.told = new Told(reader);
  }

  /** Adds a piece; sees to the oldest first when too many are under way. */
  void add(Callable<List<Part>> piece) throws IOException {
    FutureTask<List<Part>> task = new FutureTask<>(piece);
    workers.execute(task);
    underWay.add(task);
    while (underWay.size() > most || (!underWay.isEmpty() && underWay.peek().isDone())) {
      writeOldest();
    }
  }

  /** Writes out everything and sends it on its way. */
  void flush() throws IOException {
    while (!underWay.isEmpty()) {
      writeOldest();
    }
    out.flush();
  }

  /** Drops what nobody will read any more. */
  void cancel() {
    underWay.forEach(piece -> piece.cancel(true));
  }

  private void writeOldest() throws IOException {
    FutureTask<List<Part>> oldest = underWay.remove();
    // Nothing is done where a worker is at it already, or has done it.
    oldest.run();
    try {
      for (Part part : oldest.get()) {
        out.write(part.after(told));
      }
    } catch (ExecutionException failure) {
      if (failure.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException("a piece of a batch failed", failure.getCause());
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
      throw new UncheckedIOException(new IOException("stopping", stopping));
    }
  }
}
