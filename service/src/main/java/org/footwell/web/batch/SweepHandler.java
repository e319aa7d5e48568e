package org.footwell.web.batch;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.footwell.analysis.Point;
import org.footwell.analysis.Sweep;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Endpoints;
import org.footwell.web.request.Exchange;
import org.footwell.web.request.Format;
import org.footwell.web.request.Formats;
import org.footwell.web.request.Languages;
import org.footwell.web.request.Problems;
import org.footwell.web.request.Query;

/**
 * {@code /v1/{calculation}/sweep}: one request with its inputs going through their values, row by
 * row, in constant memory, on all cores and in order.
 */
public final class SweepHandler {

  private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV, Format.LINES);

  /** Rows that are answered together at most. */
  private static final int MOST_ROWS = 64;

  private final Endpoints endpoints;
  private final int bodyBytes;
  private final Workers workers;

  public SweepHandler(Endpoints endpoints, int bodyBytes, Workers workers) {
    this.endpoints = endpoints;
    this.bodyBytes = bodyBytes;
    this.workers = workers;
  }

  public List<String> allowed(Context ctx) {
    endpoints.of(ctx);
    return List.of("POST", "OPTIONS");
  }

  public void post(Context ctx) {
    post(ctx, endpoints.of(ctx));
  }

  private <Q extends Record, R extends Record> void post(Context ctx, Endpoint<Q, R> endpoint) {
    Query query = Query.ofSweep(ctx.queryString());
    query.requireNoFields();
    Format format = Formats.wanted(FORMATS, query.option("format"), ctx.header("Accept"));
    if (!format.equals(Format.CSV)) {
      query.requireNone(CsvForm.SEPARATOR, Format.CSV);
    }
    Sweep<Q, R> sweep = endpoint.sweep(Exchange.jsonBody(ctx, bodyBytes));
    Reader reader = Languages.reader(ctx);
    SweepForm form =
        format.equals(Format.CSV)
            ? new SweepCsv(sweep, CsvForm.of(query), reader)
            : new SweepJson(sweep, format.equals(Format.LINES), query.digits());
    try (Rows rows = workers.rows(ctx, reader)) {
      write(endpoint, sweep, form, rows.start(format), reader);
      rows.whole();
    } catch (IOException callerIsGone) {
      throw new UncheckedIOException(callerIsGone);
    } catch (OutOfMemoryError tooMuchAtOnce) {
      throw BatchHandler.noMemory(tooMuchAtOnce);
    }
  }

  /** Writes the whole table; its rows are worked out by the threads of the pipeline. */
  static <Q extends Record, R extends Record> void write(
      Endpoint<Q, R> endpoint, Sweep<Q, R> sweep, SweepForm form, Pipeline pipeline, Reader reader)
      throws IOException {
    pipeline.add(() -> List.of(Part.of(form.head())));
    PieceSize size = new PieceSize(MOST_ROWS);
    int count = sweep.rowCount();
    for (int row = 0; row < count; ) {
      int first = row;
      int end = Math.min(count, row + size.rows());
      pipeline.add(
          size.timed(
              end - first,
              () -> {
                List<Part> parts = new ArrayList<>(2 * (end - first));
                for (int i = first; i < end; i++) {
                  parts.addAll(row(endpoint, sweep, i, form, reader));
                }
                return parts;
              }));
      row = end;
    }
    pipeline.add(() -> List.of(Part.of(form.tail())));
    pipeline.flush();
  }

  private static <Q extends Record, R extends Record> List<Part> row(
      Endpoint<Q, R> endpoint, Sweep<Q, R> sweep, int row, SweepForm form, Reader reader) {
    List<Object> inputs = sweep.values(row);
    long number = row + 1L;
    try {
      Point point = endpoint.point(sweep, inputs);
      if (point.refused() != null) {
        throw point.refused();
      }
      return form.row(number, inputs, point);
    } catch (RuntimeException failure) {
      return form.row(number, inputs, Problems.of(failure, null, reader).atLine(number));
    }
  }
}
