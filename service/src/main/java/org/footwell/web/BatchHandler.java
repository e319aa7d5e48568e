package org.footwell.web;

import io.javalin.http.Context;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * {@code /v1/{calculation}/batch}: the same calculation row by row, in constant memory, on
 * all cores and in order. A faulty row carries its own problem and never stops the rest.
 */
final class BatchHandler implements AutoCloseable {

  private static final String CSV = "text/csv";
  private static final String NDJSON = "application/x-ndjson";
  private static final String JSON = "application/json";

  /**
   * A body of a stated size up to this is read whole before the answer begins: some callers read
   * nothing before all is sent, and would wait for ever while the answer waits for them.
   */
  static final int READ_FIRST_BYTES = 2 << 20;

  private static final int OUTPUT_BYTES = 16 * 1024;

  private final Endpoints endpoints;
  private final int rowBytes;
  private final int cores = Runtime.getRuntime().availableProcessors();
  private final ExecutorService workers =
      Executors.newFixedThreadPool(
          cores,
          task -> {
            Thread thread = new Thread(task, "batch");
            thread.setDaemon(true);
            return thread;
          });

  BatchHandler(Endpoints endpoints, int rowBytes) {
    this.endpoints = endpoints;
    this.rowBytes = rowBytes;
  }

  @Override
  public void close() {
    workers.shutdownNow();
  }

  List<String> allowed(Context ctx) {
    endpoints.of(ctx);
    return List.of("POST", "OPTIONS");
  }

  void post(Context ctx) {
    Endpoint<?, ?> endpoint = endpoints.of(ctx);
    Query query = Query.ofBatch(ctx.queryString());
    query.requireNoFields();
    try {
      post(ctx, endpoint, query);
    } catch (IOException callerIsGone) {
      throw new UncheckedIOException(callerIsGone);
    }
  }

  private void post(Context ctx, Endpoint<?, ?> endpoint, Query query) throws IOException {
    OutputStream out = new BufferedOutputStream(ctx.res().getOutputStream(), OUTPUT_BYTES);
    // As many again as there are cores, so that none waits for the caller.
    Pipeline pipeline = new Pipeline(workers, 2 * cores, out);
    try {
      switch (Exchange.mediaType(ctx.req().getContentType())) {
        case CSV -> csv(ctx, endpoint, query, pipeline);
        case NDJSON -> {
          start(ctx, NDJSON);
          new LinesBatch(endpoint, input(ctx), rowBytes).answer(pipeline);
        }
        case JSON -> {
          try (ArrayBatch array = new ArrayBatch(endpoint, input(ctx), rowBytes)) {
            start(ctx, JSON);
            array.answer(pipeline);
          }
        }
        default ->
            throw ProblemException.of(
                ProblemType.WRONG_CONTENT_TYPE,
                "A batch is read as " + String.join(", ", CSV, NDJSON, JSON) + ".");
      }
    } finally {
      pipeline.cancel();
    }
  }

  private static void csv(Context ctx, Endpoint<?, ?> endpoint, Query query, Pipeline pipeline)
      throws IOException {
    if (!endpoint.request().flat()) {
      throw ProblemException.of(
          ProblemType.WRONG_CONTENT_TYPE,
          "Requests of this calculation do not fit a row; send " + NDJSON + " or " + JSON + ".");
    }
    try (CsvBatch<?, ?> batch = CsvBatch.open(endpoint, input(ctx), CsvForm.of(query))) {
      start(ctx, Format.CSV.contentType());
      batch.answer(pipeline);
    }
  }

  private static AnnouncedInput input(Context ctx) throws IOException {
    InputStream in = ctx.req().getInputStream();
    long stated = ctx.req().getContentLengthLong();
    return new AnnouncedInput(
        stated >= 0 && stated <= READ_FIRST_BYTES
            ? new ByteArrayInputStream(in.readNBytes((int) stated))
            : in);
  }

  private static void start(Context ctx, String contentType) {
    ctx.res().setContentType(contentType);
    ctx.res().setHeader("Cache-Control", "no-store");
  }
}
