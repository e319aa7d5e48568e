package org.footwell.web.request;

import io.javalin.http.Context;
import java.io.UncheckedIOException;
import java.util.List;
import org.eclipse.jetty.http.HttpException;
import org.footwell.calculation.DeadlinePassed;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Refused;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.spi.LoggingEventBuilder;

/** The one place where whatever went wrong becomes a problem answer. */
public final class Problems {

  public static final String CONTENT_TYPE = "application/problem+json";

  private static final Logger LOG = LoggerFactory.getLogger(Problems.class);

  private Problems() {}

  /**
   * The problem behind a failure; what is not a known kind is logged and told neutrally.
   *
   * @param known what the request is known by, or null where its problem does not say it
   */
  public static Problem of(Throwable failure, RequestId known, Reader reader) {
    Problem problem = of(failure, reader);
    if (problem == null) {
      LoggingEventBuilder line = LOG.atError().setCause(failure);
      (known == null ? line : known.in(line)).log("request failed");
      problem = worded(ProblemType.INTERNAL, Phrase.of(ProblemWords.FAILED), reader);
    }
    return known == null ? problem : problem.of(known);
  }

  /** Of a failure of a known kind, otherwise null. */
  private static Problem of(Throwable failure, Reader reader) {
    if (failure instanceof Refused refused) {
      return invalid(refused.faults(reader), reader);
    }
    if (failure instanceof ProblemException problem) {
      return problem.faults() == null
          ? worded(problem.type(), problem.detail(), reader)
          : invalid(problem.faults().list(reader), reader);
    }
    if (failure instanceof HttpException) {
      Phrase detail = Phrase.of(ProblemWords.NOT_WELL_FORMED);
      return worded(ProblemType.UNREADABLE, detail, reader);
    }
    if (failure instanceof DeadlinePassed) {
      return worded(ProblemType.TOO_SLOW, Phrase.of(ProblemWords.PAST_DEADLINE), reader);
    }
    return null;
  }

  private static Problem worded(ProblemType type, Phrase detail, Reader reader) {
    return Problem.of(type, detail.said(reader), null, reader);
  }

  private static Problem invalid(List<Fault> faults, Reader reader) {
    String first = faults.get(0).detail();
    String detail =
        faults.size() == 1
            ? first
            : Phrase.of(
                    faults.size() >= Faults.MOST ? WebWords.MANY_FAULTS : WebWords.SEVERAL_FAULTS)
                .with("count", faults.size())
                .own("first", first)
                .said(reader);
    return Problem.of(ProblemType.INVALID, detail, faults, reader);
  }

  public static void answer(Context ctx, Throwable failure) {
    // Part of the answer is out, or nobody is left to read it: only closing tells the caller.
    if (failure instanceof UncheckedIOException) {
      RequestId.of(ctx).in(LOG.atInfo()).log("answer broken off: {}", failure.toString());
      closeConnection(ctx);
      return;
    }
    if (ctx.res().isCommitted()) {
      RequestId.of(ctx).in(LOG.atError()).setCause(failure).log("answer broken off");
      closeConnection(ctx);
      return;
    }
    Problem problem = of(failure, RequestId.of(ctx), Languages.reader(ctx));
    if (failure instanceof ProblemException exception) {
      exception.headers().forEach(ctx.res()::setHeader);
    }
    if (failure instanceof DeadlinePassed || problem.type().equals(ProblemType.BUSY.uri())) {
      ctx.res().setHeader("Retry-After", "1");
    }
    ctx.res().setHeader("Cache-Control", "no-store");
    WrittenProblem written = WrittenProblem.of(problem, ctx.queryString());
    Exchange.write(ctx, written.status(), written.contentType(), written.body());
    Exchange.linger(ctx);
  }

  private static void closeConnection(Context ctx) {
    Exchange.connection(ctx.req()).close();
  }
}
