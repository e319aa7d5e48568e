package org.footwell.web.request;

import io.javalin.http.Context;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jetty.http.HttpException;
import org.footwell.calculation.DeadlinePassed;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Refused;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The one place where whatever went wrong becomes a problem answer. */
public final class Problems {

  public static final String CONTENT_TYPE = "application/problem+json";

  private static final Logger LOG = LoggerFactory.getLogger(Problems.class);
  private static final Pattern TRACEPARENT =
      Pattern.compile("[0-9a-f]{2}-([0-9a-f]{32})-[0-9a-f]{16}-[0-9a-f]{2}");

  private Problems() {}

  /** The problem behind a failure; what is not a known kind is logged and told neutrally. */
  public static Problem of(Throwable failure, String traceId, Reader reader) {
    if (failure instanceof Refused refused) {
      return invalid(refused.faults(reader), traceId, reader);
    }
    if (failure instanceof ProblemException problem) {
      return problem.faults() == null
          ? worded(problem.type(), problem.detail(), traceId, reader)
          : invalid(problem.faults().list(reader), traceId, reader);
    }
    if (failure instanceof HttpException) {
      Phrase detail = Phrase.of(ProblemWords.NOT_WELL_FORMED);
      return worded(ProblemType.UNREADABLE, detail, traceId, reader);
    }
    if (failure instanceof DeadlinePassed) {
      return worded(ProblemType.TOO_SLOW, Phrase.of(ProblemWords.PAST_DEADLINE), traceId, reader);
    }
    LOG.error("request failed, trace {}", traceId, failure);
    return worded(ProblemType.INTERNAL, Phrase.of(ProblemWords.FAILED), traceId, reader);
  }

  private static Problem worded(ProblemType type, Phrase detail, String traceId, Reader reader) {
    return Problem.of(type, detail.said(reader.language()), null, traceId, reader);
  }

  private static Problem invalid(List<Fault> faults, String traceId, Reader reader) {
    String first = faults.get(0).detail();
    String detail =
        faults.size() == 1
            ? first
            : Phrase.of(
                    faults.size() >= Faults.MOST ? WebWords.MANY_FAULTS : WebWords.SEVERAL_FAULTS)
                .with("count", faults.size())
                .own("first", first)
                .said(reader.language());
    return Problem.of(ProblemType.INVALID, detail, faults, traceId, reader);
  }

  public static void answer(Context ctx, Throwable failure) {
    // Part of the answer is out, or nobody is left to read it: only closing tells the caller.
    if (failure instanceof UncheckedIOException) {
      LOG.info("answer broken off: {}", failure.toString());
      closeConnection(ctx);
      return;
    }
    if (ctx.res().isCommitted()) {
      LOG.error("answer broken off", failure);
      closeConnection(ctx);
      return;
    }
    Problem problem = of(failure, traceId(ctx), Languages.reader(ctx));
    if (failure instanceof ProblemException exception) {
      exception.headers().forEach(ctx.res()::setHeader);
    }
    if (failure instanceof DeadlinePassed || problem.type().equals(ProblemType.BUSY.uri())) {
      ctx.res().setHeader("Retry-After", "1");
    }
    ctx.res().setHeader("Cache-Control", "no-store");
    if (Query.asksForTextErrors(ctx.queryString())) {
      Exchange.write(ctx, 200, Format.TEXT.contentType(), Rendering.utf8(problem.sentence()));
    } else {
      Exchange.write(ctx, problem.status(), CONTENT_TYPE, Json.bytes(problem));
    }
    Exchange.linger(ctx);
  }

  private static void closeConnection(Context ctx) {
    Exchange.connection(ctx.req()).close();
  }

  private static String traceId(Context ctx) {
    String traceparent = ctx.header("traceparent");
    if (traceparent == null) {
      return null;
    }
    Matcher matcher = TRACEPARENT.matcher(traceparent);
    return matcher.matches() ? matcher.group(1) : null;
  }
}
