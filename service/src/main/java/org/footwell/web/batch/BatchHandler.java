package org.footwell.web.batch;

import io.javalin.http.Context;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Coding;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Endpoints;
import org.footwell.web.request.Exchange;
import org.footwell.web.request.Format;
import org.footwell.web.request.Formats;
import org.footwell.web.request.Languages;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;
import org.footwell.web.request.Query;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * {@code /v1/{calculation}/batch}: the same calculation row by row, in constant memory, on
 * all cores and in order. A faulty row carries its own problem and never stops the rest.
 */
public final class BatchHandler {

  private static final Logger LOG = LoggerFactory.getLogger(BatchHandler.class);

  private static final List<Format> FORMATS = List.of(Format.CSV, Format.LINES, Format.JSON);

  /**
   * A body of a stated size up to this is read whole before the answer begins: some callers read
   * nothing before all is sent, and would wait for ever while the answer waits for them.
   */
  static final int READ_FIRST_BYTES = 2 << 20;

  private final Endpoints endpoints;
  private final int rowBytes;
  private final Workers workers;

  public BatchHandler(Endpoints endpoints, int rowBytes, Workers workers) {
    this.endpoints = endpoints;
    this.rowBytes = rowBytes;
    this.workers = workers;
  }

  public List<String> allowed(Context ctx) {
    endpoints.of(ctx);
    return List.of("POST", "OPTIONS");
  }

  public void post(Context ctx) {
    Endpoint<?, ?> endpoint = endpoints.of(ctx);
    Query query = Query.ofBatch(ctx.queryString());
    query.requireNoFields();
    try {
      post(ctx, endpoint, query);
    } catch (IOException callerIsGone) {
      throw new UncheckedIOException(callerIsGone);
    } catch (OutOfMemoryError tooMuchAtOnce) {
      throw noMemory(tooMuchAtOnce);
    }
  }

  static ProblemException noMemory(OutOfMemoryError tooMuchAtOnce) {
    LOG.error("not enough memory for a table: give the heap more", tooMuchAtOnce);
    return ProblemException.of(ProblemType.BUSY, ProblemWords.NO_MEMORY_FOR_ROWS);
  }

  private void post(Context ctx, Endpoint<?, ?> endpoint, Query query) throws IOException {
    Reader reader = Languages.reader(ctx);
    Format format = format(Exchange.contentType(ctx.req()));
    Coding coding = Exchange.coding(ctx.req());
    Formats.accepted(List.of(format), ctx.header("Accept"));
    if (!format.equals(Format.CSV)) {
      query.requireNone(CsvForm.OPTIONS, Format.CSV);
    }
    try (Rows rows = workers.rows(ctx, reader)) {
      AnnouncedInput input = new AnnouncedInput(sent(ctx), coding);
      if (format.equals(Format.CSV)) {
        csv(endpoint, input, query, reader, rows);
      } else {
        json(new BatchRow<>(endpoint, query.digits(), reader), input, format, rows);
      }
      rows.whole();
    }
  }

  /** A batch is answered in the form it comes in. */
  private static Format format(String contentType) {
    String type = Exchange.mediaType(contentType);
    return FORMATS.stream()
        .filter(format -> format.mediaType().equals(type))
        .findFirst()
        .orElseThrow(
            () ->
                wrongType(
                    Phrase.of(ProblemWords.BATCH_TYPES)
                        .own("types", FORMATS.stream().map(Format::mediaType).toList())));
  }

  private static ProblemException wrongType(Phrase sentence) {
    return ProblemException.of(ProblemType.WRONG_CONTENT_TYPE, sentence);
  }

  private void json(BatchRow<?> row, AnnouncedInput input, Format format, Rows rows)
      throws IOException {
    if (format.equals(Format.LINES)) {
      new LinesBatch(row, input, rowBytes).answer(rows.start(format));
    } else {
      try (ArrayBatch array = new ArrayBatch(row, input, rowBytes)) {
        array.answer(rows.start(format));
      }
    }
  }

  private void csv(
      Endpoint<?, ?> endpoint, AnnouncedInput input, Query query, Reader reader, Rows rows)
      throws IOException {
    if (!endpoint.flat()) {
      throw wrongType(
          Phrase.of(ProblemWords.NO_ROWS)
              .own("lines", Format.LINES.mediaType())
              .own("array", Format.JSON.mediaType()));
    }
    try (CsvBatch<?, ?> batch =
        new CsvBatch<>(endpoint, input, rowBytes, CsvForm.of(query), reader)) {
      batch.answer(rows.start(Format.CSV));
    }
  }

  private static InputStream sent(Context ctx) throws IOException {
    long stated = ctx.req().getContentLengthLong();
    return stated >= 0 && stated <= READ_FIRST_BYTES
        ? new ByteArrayInputStream(Exchange.sent(ctx).readNBytes((int) stated + 1))
        : Exchange.sentAtAnyPace(ctx);
  }
}
