package org.footwell.web;

import io.javalin.http.Context;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * {@code /v1/{calculation}/batch}: the same calculation row by row, in constant memory and in
 * order. A faulty row carries its own problem and never stops the rest.
 */
final class BatchHandler {

  private static final String CSV = "text/csv";
  private static final String NDJSON = "application/x-ndjson";
  private static final String JSON = "application/json";

  private final Endpoints endpoints;
  private final int rowBytes;

  BatchHandler(Endpoints endpoints, int rowBytes) {
    this.endpoints = endpoints;
    this.rowBytes = rowBytes;
  }

  List<String> allowed(Context ctx) {
    endpoints.of(ctx);
    return List.of("POST", "OPTIONS");
  }

  void post(Context ctx) {
    Endpoint<?, ?> endpoint = endpoints.of(ctx);
    Query query = Query.ofBatch(ctx.queryString());
    query.requireNoFields();
    String separator = query.option("separator");
    String type = Exchange.mediaType(ctx.req().getContentType());
    try {
      switch (type) {
        case CSV -> csv(ctx, endpoint, "semicolon".equals(separator) ? ';' : ',');
        case NDJSON -> {
          start(ctx, NDJSON);
          InputStream in = new BufferedInputStream(ctx.req().getInputStream());
          LinesBatch.answer(
              endpoint, in, new FlushingOutput(in, ctx.res().getOutputStream()), rowBytes);
        }
        case JSON -> {
          try (ArrayBatch array = new ArrayBatch(ctx.req().getInputStream(), rowBytes)) {
            start(ctx, JSON);
            array.answer(endpoint, output(ctx));
          }
        }
        default ->
            throw ProblemException.of(
                ProblemType.WRONG_CONTENT_TYPE,
                "A batch is read as " + String.join(", ", CSV, NDJSON, JSON) + ".");
      }
    } catch (IOException callerIsGone) {
      throw new UncheckedIOException(callerIsGone);
    }
  }

  private static void csv(Context ctx, Endpoint<?, ?> endpoint, char separator) throws IOException {
    if (!endpoint.request().flat()) {
      throw ProblemException.of(
          ProblemType.WRONG_CONTENT_TYPE,
          "Requests of this calculation do not fit a row; send " + NDJSON + " or " + JSON + ".");
    }
    try (CsvBatch<?> batch = CsvBatch.open(endpoint, ctx.req().getInputStream(), separator)) {
      start(ctx, Format.CSV.contentType());
      batch.run(output(ctx));
    }
  }

  private static void start(Context ctx, String contentType) {
    ctx.res().setContentType(contentType);
    ctx.res().setHeader("Cache-Control", "no-store");
  }

  private static FlushingOutput output(Context ctx) throws IOException {
    return new FlushingOutput(ctx.req().getInputStream(), ctx.res().getOutputStream());
  }
}
