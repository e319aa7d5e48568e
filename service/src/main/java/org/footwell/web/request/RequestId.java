package org.footwell.web.request;

import io.javalin.http.Context;
import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slf4j.spi.LoggingEventBuilder;

/**
 * What a request is known by. It goes back as header {@code X-Request-Id}, and stands in problems and
 * in the log.
 *
 * @param id the one its caller sent in that header, where it could be taken for nothing else, or else
 *     one of ours
 * @param trace the trace id of its header {@code traceparent}, or null
 */
public record RequestId(String id, String trace) {

  public static final String HEADER = "X-Request-Id";
  public static final String TRACE_HEADER = "traceparent";

  private static final int LONGEST = 64;

  private static final Pattern HARMLESS = Pattern.compile("[A-Za-z0-9._-]{1," + LONGEST + "}");

  /** W3C Trace Context, section 3.2.2: of zeros only no id is valid, and no version is ff. */
  private static final Pattern TRACEPARENT =
      Pattern.compile(
          "(?!ff)[0-9a-f]{2}-(?!0{32})([0-9a-f]{32})-(?!0{16})[0-9a-f]{16}-[0-9a-f]{2}");

  /**
   * Of the headers of a request, or null where they are missing.
   *
   * @param id what {@code X-Request-Id} says
   * @param traceparent what {@code traceparent} says
   */
  public static RequestId sent(String id, String traceparent) {
    return new RequestId(
        id != null && HARMLESS.matcher(id).matches() ? id : ownId(), traceOf(traceparent));
  }

  private static String traceOf(String traceparent) {
    if (traceparent == null) {
      return null;
    }
    Matcher matcher = TRACEPARENT.matcher(traceparent);
    return matcher.matches() ? matcher.group(1) : null;
  }

  private static String ownId() {
    return HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextLong());
  }

  /** Settles what a request is known by; its answer carries it. */
  public static void give(Context ctx) {
    ctx.res().setHeader(HEADER, sent(ctx.header(HEADER), null).id());
  }

  /** What a request is known by, once that is settled. */
  public static RequestId of(Context ctx) {
    return sent(ctx.res().getHeader(HEADER), ctx.header(TRACE_HEADER));
  }

  /** Adds it to a log line. */
  public LoggingEventBuilder in(LoggingEventBuilder line) {
    LoggingEventBuilder known = line.addKeyValue("request_id", id);
    return trace == null ? known : known.addKeyValue("trace_id", trace);
  }
}
