package org.footwell.web.request;

import io.javalin.http.Context;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.footwell.calculation.text.Phrase;

/** How the bytes of a body are coded on their way (RFC 9110, section 8.4). */
public enum Coding {
  IDENTITY,
  GZIP;

  /** Shorter answers are sent as they are: coding would save less than a packet. */
  static final int SHORT_BYTES = 1_024;

  private static final String NAME = "gzip";
  private static final String OLD_NAME = "x-gzip";
  private static final String ANY = "*";

  private static final String WANTED = Coding.class.getName();

  /**
   * Finds out which coding the caller takes, before anything else is done for it.
   *
   * @throws ProblemException if it takes none that there is
   */
  public static void choose(Context ctx) {
    String accepted = header(ctx.req(), "Accept-Encoding");
    if (!accepted.isEmpty()) {
      ctx.req().setAttribute(WANTED, Accepted.of(accepted));
    }
  }

  /** That of an answer of unknown length. */
  public static Coding of(Context ctx) {
    return accepted(ctx).gzip() ? GZIP : IDENTITY;
  }

  /** That of an answer of so many bytes. */
  static Coding of(Context ctx, int bytes) {
    Accepted accepted = accepted(ctx);
    return accepted.gzip() && (bytes > SHORT_BYTES || !accepted.identity()) ? GZIP : IDENTITY;
  }

  private static Accepted accepted(Context ctx) {
    Object accepted = ctx.req().getAttribute(WANTED);
    return accepted == null ? Accepted.NOTHING_SAID : (Accepted) accepted;
  }

  /** Tells the caller, and caches that another may get it otherwise. */
  public void describe(Context ctx) {
    ctx.res().addHeader("Vary", "Accept-Encoding");
    if (this == GZIP) {
      ctx.res().setHeader("Content-Encoding", NAME);
    }
  }

  /**
   * That of the body of a request.
   *
   * @throws ProblemException if it is none that is read
   */
  static Coding ofBody(HttpServletRequest request) {
    String coding = header(request, "Content-Encoding").strip();
    if (coding.isEmpty() || coding.equalsIgnoreCase("identity")) {
      return IDENTITY;
    }
    if (coding.equalsIgnoreCase(NAME) || coding.equalsIgnoreCase(OLD_NAME)) {
      return GZIP;
    }
    throw ProblemException.of(
            ProblemType.WRONG_CONTENT_TYPE, Phrase.of(ProblemWords.CODED).own("coding", coding))
        .with("Accept-Encoding", NAME);
  }

  /** A body as it was before it was coded. */
  public InputStream decoded(InputStream body) throws IOException {
    return this == GZIP ? new GunzipInput(body) : body;
  }

  private static String header(HttpServletRequest request, String name) {
    Enumeration<String> lines = request.getHeaders(name);
    return lines.hasMoreElements() ? String.join(",", Collections.list(lines)) : "";
  }

  /**
   * What a caller takes (RFC 9110, section 12.5.3).
   *
   * @param gzip whether it is to be sent that, where it is worth it
   * @param identity whether it may be sent what is not coded
   */
  record Accepted(boolean gzip, boolean identity) {

    static final Accepted NOTHING_SAID = new Accepted(false, true);

    /**
     * Reads the header.
     *
     * @throws ProblemException if neither is allowed
     */
    static Accepted of(String header) {
      Map<String, Double> qualities = new HashMap<>();
      for (String range : header.split(",", -1)) {
        String[] parts = range.strip().split("\\s*;\\s*", -1);
        qualities.put(parts[0].toLowerCase(Locale.ROOT), Formats.quality(parts));
      }
      Double any = qualities.get(ANY);
      Double gzip = qualities.getOrDefault(NAME, qualities.getOrDefault(OLD_NAME, any));
      Double identity = qualities.getOrDefault("identity", any != null && any == 0 ? any : null);
      boolean mayBeGzip = gzip != null && gzip > 0;
      boolean mayBePlain = identity == null || identity > 0;
      if (!mayBeGzip && !mayBePlain) {
        throw ProblemException.of(ProblemType.NOT_ACCEPTABLE, ProblemWords.NO_CODING_ACCEPTED);
      }
      boolean plainIsLiked = identity != null && mayBeGzip && identity > gzip;
      return new Accepted(mayBeGzip && !plainIsLiked, mayBePlain);
    }
  }
}
