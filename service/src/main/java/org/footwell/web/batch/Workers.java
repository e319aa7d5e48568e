package org.footwell.web.batch;

import java.io.OutputStream;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.footwell.calculation.text.Reader;

/** The threads that answer rows, one for each core, for all tables of the service together. */
public final class Workers implements AutoCloseable {

  private final int cores = Runtime.getRuntime().availableProcessors();
  private final ExecutorService threads =
      Executors.newFixedThreadPool(
          cores,
          task -> {
            Thread thread = new Thread(task, "batch");
            thread.setDaemon(true);
            return thread;
          });

  /** A table's way to its caller: as many pieces again as there are cores, so that none waits. */
  Pipeline into(OutputStream out, Reader reader) {
    return new Pipeline(threads, 2 * cores, out, reader);
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
