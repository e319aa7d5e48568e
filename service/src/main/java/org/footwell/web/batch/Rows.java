package org.footwell.web.batch;

import io.javalin.http.Context;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.ExecutorService;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Coding;
import org.footwell.web.request.Exchange;
import org.footwell.web.request.Format;
import org.footwell.web.request.GzipOutput;

/** The rows of a table on their way to their caller, in order and in the coding it takes. */
final class Rows implements AutoCloseable {

  private static final int OUTPUT_BYTES = 16 * 1024;

  private final Context ctx;
  private final Coding coding;

  /** Codes them, or null. */
  private final GzipOutput gzip;

  private final Pipeline pipeline;

  Rows(Context ctx, Reader reader, ExecutorService workers, int piecesUnderWay) throws IOException {
    this.ctx = ctx;
    coding = Coding.of(ctx);
    OutputStream answer = Exchange.answer(ctx);
    gzip = coding == Coding.GZIP ? new GzipOutput(answer) : null;
    OutputStream out = new BufferedOutputStream(gzip == null ? answer : gzip, OUTPUT_BYTES);
    pipeline = new Pipeline(workers, piecesUnderWay, out, reader);
  }

  /** Begins the answer. */
  Pipeline start(Format format) {
    ctx.res().setContentType(format.contentType());
    ctx.res().setHeader("Cache-Control", "no-store");
    // Also where the connection closes afterwards, so that a caller can tell whether it has all.
    ctx.res().setHeader("Transfer-Encoding", "chunked");
    coding.describe(ctx);
    return pipeline;
  }

  /** Says that nothing is missing. */
  void whole() throws IOException {
    if (gzip != null) {
      gzip.finish();
    }
  }

  /** Drops what nobody will read any more. */
  @Override
  public void close() {
    pipeline.cancel();
    if (gzip != null) {
      gzip.release();
    }
  }
}
