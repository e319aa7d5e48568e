package org.footwell.web;

import io.javalin.http.Context;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.Locale;
import java.util.Set;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;

/** Reading bodies within their limit and writing answers straight, with their length. */
final class Exchange {

  private static final Duration LONGEST_LINGER = Duration.ofSeconds(2);
  private static final int LINGER_ROUNDS = 10;
  private static final long LINGER_MS = 20;

  private static final Set<String> PLAIN = Set.of("utf-8", "utf8", "us-ascii", "ascii");

  private static final String PACE = Pace.class.getName();

  private Exchange() {}

  /** Sets how fast the caller must be. */
  static void pace(Context ctx, Pace pace) {
    ctx.req().setAttribute(PACE, pace);
  }

  private static Pace pace(Context ctx) {
    return (Pace) ctx.req().getAttribute(PACE);
  }

  /** The body of a request, which must come at its pace. */
  static InputStream body(Context ctx) throws IOException {
    return new PacedInput(ctx.req().getInputStream(), pace(ctx));
  }

  /** Where the answer is written, at the pace of the caller within bounds. */
  static OutputStream answer(Context ctx) throws IOException {
    return new PacedOutput(
        ServletContextRequest.getServletContextRequest(ctx.req()),
        ctx.res().getOutputStream(),
        pace(ctx));
  }

  /**
   * Reads a body that must be JSON.
   *
   * @throws ProblemException if it is of another type or larger than {@code most} bytes
   */
  static byte[] jsonBody(Context ctx, int most) {
    HttpServletRequest request = ctx.req();
    String type = mediaType(request.getContentType());
    if (!type.equals("application/json")) {
      throw ProblemException.of(
          ProblemType.WRONG_CONTENT_TYPE,
          "Send JSON with the header Content-Type: application/json"
              + (type.isEmpty() ? "." : ", not " + type + "."));
    }
    requirePlain(request);
    if (request.getContentLengthLong() > most) {
      throw tooLarge(most);
    }
    try (InputStream in = body(ctx)) {
      byte[] body = in.readNBytes(most + 1);
      if (body.length > most) {
        throw tooLarge(most);
      }
      return body;
    } catch (IOException brokenOff) {
      throw ProblemException.of(ProblemType.UNREADABLE, "The body breaks off.");
    }
  }

  /**
   * Refuses a body that is compressed or in another encoding of letters: read as it stands it would
   * be garbled.
   */
  static void requirePlain(HttpServletRequest request) {
    String coding = request.getHeader("Content-Encoding");
    if (coding != null && !coding.equalsIgnoreCase("identity")) {
      throw ProblemException.of(
          ProblemType.WRONG_CONTENT_TYPE, "Send the body as it is, not as " + coding + ".");
    }
    String charset = request.getCharacterEncoding();
    if (charset != null && !PLAIN.contains(charset.toLowerCase(Locale.ROOT))) {
      throw ProblemException.of(
          ProblemType.WRONG_CONTENT_TYPE,
          "Send the body in UTF-8, not in " + charset.toLowerCase(Locale.ROOT) + ".");
    }
  }

  static ProblemException tooLarge(int most) {
    return ProblemException.of(
        ProblemType.TOO_LARGE, "The body is larger than " + most + " bytes.");
  }

  /**
   * Sends the answer, then goes on reading for a moment what is left of the body: a caller who is cut
   * off while still sending never sees it.
   */
  static void linger(Context ctx) {
    try {
      if (!unread(ctx.req())) {
        return;
      }
      ctx.res().flushBuffer();
      ServletInputStream in = ctx.req().getInputStream();
      long end = System.nanoTime() + LONGEST_LINGER.toNanos();
      int quiet = 0;
      while (quiet < LINGER_ROUNDS && !in.isFinished() && System.nanoTime() - end < 0) {
        if (in.available() > 0) {
          quiet = 0;
          in.skip(in.available());
        } else {
          quiet++;
          Thread.sleep(LINGER_MS);
        }
      }
    } catch (IOException goneAlready) {
      return;
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whether a body was announced whose end has not been read. */
  private static boolean unread(HttpServletRequest request) throws IOException {
    boolean announced =
        request.getContentLengthLong() > 0 || request.getHeader("Transfer-Encoding") != null;
    return announced && !request.getInputStream().isFinished();
  }

  /** The media type of a Content-Type header without parameters, in lower case. */
  static String mediaType(String contentType) {
    if (contentType == null) {
      return "";
    }
    int semicolon = contentType.indexOf(';');
    String type = semicolon < 0 ? contentType : contentType.substring(0, semicolon);
    return type.strip().toLowerCase(Locale.ROOT);
  }

  static void write(Context ctx, int status, String contentType, byte[] body) {
    HttpServletResponse response = ctx.res();
    response.setStatus(status);
    response.setContentType(contentType);
    response.setContentLength(body.length);
    try {
      answer(ctx).write(body);
    } catch (IOException callerIsGone) {
      throw new UncheckedIOException(callerIsGone);
    }
  }
}
