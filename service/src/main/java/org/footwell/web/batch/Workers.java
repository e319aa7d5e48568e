package org.footwell.web.batch;

import io.javalin.http.Context;
import java.io.IOException;
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
  Rows rows(Context ctx, Reader reader) throws IOException {
    return new Rows(ctx, reader, threads, 2 * cores);
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
