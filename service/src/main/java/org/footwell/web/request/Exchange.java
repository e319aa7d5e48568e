package org.footwell.web.request;

import io.javalin.http.Context;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.Request;
import org.footwell.calculation.text.Phrase;

/** Reading bodies within their limit and writing answers straight, with their length. */
public final class Exchange {

  private static final Duration LONGEST_SILENCE = Duration.ofSeconds(5);
  private static final Duration LONGEST_LINGER = Duration.ofSeconds(2);
  private static final int LINGER_ROUNDS = 10;
  private static final long LINGER_MS = 20;

  private static final String UTF_8 = "utf-8";
  private static final Set<String> PLAIN = Set.of(UTF_8, "utf8", "us-ascii", "ascii");

  private static final String WAITS = Waits.class.getName();

  private static final String ONCE_WORKED = Exchange.class.getName();

  private Exchange() {}

  /**
   * How the requests of a service are waited for: each at a pace, and only so many at once.
   *
   * @param nanos the time, as {@link System#nanoTime}
   */
  public static Consumer<Context> waiting(Pace pace, LongSupplier nanos) {
    Semaphore room = new Semaphore(Waits.MOST_AT_ONCE);
    Watch watch = new Watch();
    return ctx -> ctx.req().setAttribute(WAITS, new Waits(pace, room, watch, nanos));
  }

  private static Waits waits(Context ctx) {
    return (Waits) ctx.req().getAttribute(WAITS);
  }

  /**
   * Has something done as soon as there is nothing left to do for a request but to send its answer: who has that
   * may ask again at once. Of an answer that is sent as it comes, nobody is told.
   */
  public static void onceWorked(Context ctx, Runnable then) {
    ctx.req().setAttribute(ONCE_WORKED, then);
  }

  /** How long its caller was waited for so far, ns. */
  public static long waited(Context ctx) {
    return waits(ctx).ns();
  }

  /** What comes of a request, which must come at its pace. */
  public static InputStream sent(Context ctx) throws IOException {
    return new PacedInput(sentAtAnyPace(ctx), waits(ctx).pace());
  }

  /** What comes of a request whose answer is under way, so that it may have to wait for that. */
  public static InputStream sentAtAnyPace(Context ctx) throws IOException {
    return new WaitingInput(
        ctx.req().getInputStream(), ctx.req().getContentLengthLong(), waits(ctx));
  }

  /** The body of a request, decoded. */
  public static InputStream body(Context ctx) throws IOException {
    return coding(ctx.req()).decoded(sent(ctx));
  }

  /** Where the answer is written, at the pace of the caller within bounds. */
  public static OutputStream answer(Context ctx) throws IOException {
    return new PacedOutput(
        ServletContextRequest.getServletContextRequest(ctx.req()),
        ctx.res().getOutputStream(),
        waits(ctx));
  }

  /**
   * Reads a body that must be JSON.
   *
   * @throws ProblemException if it is of another type or larger than {@code most} bytes
   */
  public static byte[] jsonBody(Context ctx, int most) {
    HttpServletRequest request = ctx.req();
    String type = mediaType(contentType(request));
    if (!type.equals("application/json")) {
      throw ProblemException.of(
          ProblemType.WRONG_CONTENT_TYPE,
          Phrase.of(ProblemWords.SEND_JSON).with("other", notOfType(type)));
    }
    long stated = statedLength(request);
    if (stated > most) {
      throw tooLarge(most);
    }
    byte[] body = inTime(ctx, stated, most);
    if (body.length > most) {
      throw tooLarge(most);
    }
    return body;
  }

  /** A body; a caller that stops sending is not waited for long. */
  private static byte[] inTime(Context ctx, long stated, int most) {
    try (InputStream in = body(ctx)) {
      // Most bodies come with their headers: nothing is waited for.
      return stated >= 0 && stated <= ctx.req().getInputStream().available()
          ? in.readNBytes((int) stated)
          : whileItComes(connection(ctx.req()), in, stated < 0 ? most + 1 : (int) stated);
    } catch (IOException brokenOff) {
      throw ProblemException.of(
          ProblemType.UNREADABLE,
          Phrase.of(ProblemWords.STOPS).with("silence", LONGEST_SILENCE.toSeconds()));
    }
  }

  private static byte[] whileItComes(EndPoint connection, InputStream in, int most)
      throws IOException {
    long usual = connection.getIdleTimeout();
    connection.setIdleTimeout(LONGEST_SILENCE.toMillis());
    try {
      return in.readNBytes(most);
    } finally {
      connection.setIdleTimeout(usual);
    }
  }

  static EndPoint connection(HttpServletRequest request) {
    return ServletContextRequest.getServletContextRequest(request)
        .getConnectionMetaData()
        .getConnection()
        .getEndPoint();
  }

  /**
   * How the body of a request is coded. One in another coding or another encoding of letters is
   * refused: read as it stands it would be garbled.
   */
  public static Coding coding(HttpServletRequest request) {
    Coding coding = Coding.ofBody(request);
    String charset = charset(contentType(request));
    if (!PLAIN.contains(charset)) {
      throw ProblemException.of(
          ProblemType.WRONG_CONTENT_TYPE,
          charset.isEmpty()
              ? Phrase.of(ProblemWords.EMPTY_CHARSET)
              : Phrase.of(ProblemWords.OTHER_CHARSET).own("charset", charset));
    }
    return coding;
  }

  /** How long a body is, bytes; negative where that is not stated, as of one that is coded. */
  public static long statedLength(HttpServletRequest request) {
    return coding(request) == Coding.IDENTITY ? request.getContentLengthLong() : -1;
  }

  /**
   * The encoding of letters that a Content-Type header names, in lower case; UTF-8 where it names
   * none.
   */
  private static String charset(String contentType) {
    if (contentType == null || contentType.indexOf(';') < 0) {
      return UTF_8;
    }
    Map<String, String> parameters = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    HttpField.getValueParameters(contentType, parameters);
    String charset = parameters.getOrDefault("charset", UTF_8);
    return charset == null ? "" : charset.strip().toLowerCase(Locale.ROOT);
  }

  public static ProblemException tooLarge(int most) {
    return ProblemException.of(
        ProblemType.TOO_LARGE, Phrase.of(ProblemWords.TOO_LARGE).with("most", most));
  }

  /** What a body was sent as, where that is stated. */
  public static Phrase notOfType(String type) {
    return type.isEmpty()
        ? Phrase.nothing()
        : Phrase.of(ProblemWords.NOT_OF_TYPE).own("type", type);
  }

  /**
   * Sends the answer, then goes on reading for a moment what is left of the body: a caller who is cut
   * off while still sending never sees it.
   */
  static void linger(Context ctx) {
    try {
      ctx.res().flushBuffer();
      Request body = ServletContextRequest.getServletContextRequest(ctx.req());
      long end = System.nanoTime() + LONGEST_LINGER.toNanos();
      int quiet = 0;
      while (quiet < LINGER_ROUNDS && System.nanoTime() - end < 0) {
        Content.Chunk chunk = body.read();
        if (chunk == null) {
          quiet++;
          Thread.sleep(LINGER_MS);
        } else if (chunk.isLast() || Content.Chunk.isFailure(chunk)) {
          chunk.release();
          return;
        } else {
          quiet = 0;
          chunk.release();
        }
      }
    } catch (IOException goneAlready) {
      return;
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
    }
  }

  /** The header Content-Type as it came: the server's own reading fails on charsets unknown to it. */
  public static String contentType(HttpServletRequest request) {
    return request.getHeader("Content-Type");
  }

  /** The media type of a Content-Type header without parameters, in lower case. */
  public static String mediaType(String contentType) {
    if (contentType == null) {
      return "";
    }
    int semicolon = contentType.indexOf(';');
    String type = semicolon < 0 ? contentType : contentType.substring(0, semicolon);
    return type.strip().toLowerCase(Locale.ROOT);
  }

  public static void write(Context ctx, int status, String contentType, byte[] body) {
    write(ctx, status, contentType, new Body(body));
  }

  private static void write(Context ctx, int status, String contentType, Body body) {
    Coding coding = coding(ctx, body);
    byte[] bytes = body.in(coding);
    HttpServletResponse response = ctx.res();
    response.setStatus(status);
    response.setContentType(contentType);
    response.setContentLength(bytes.length);
    if (ctx.req().getAttribute(ONCE_WORKED) instanceof Runnable then) {
      then.run();
    }
    try {
      answer(ctx).write(bytes);
    } catch (IOException callerIsGone) {
      throw new UncheckedIOException(callerIsGone);
    }
  }

  /** The coding of an answer, which its headers tell where it can be another. */
  private static Coding coding(Context ctx, Body body) {
    Coding coding = Coding.of(ctx, body.size());
    if (coding != Coding.IDENTITY || body.size() > Coding.SHORT_BYTES) {
      coding.describe(ctx);
    }
    return coding;
  }

  /** Sends an answer that may be kept, or tells who keeps it already that it is the same. */
  public static void writeKept(Context ctx, String contentType, Body body, String version) {
    String tag = body.tag(version, Coding.of(ctx, body.size()));
    ctx.res().setHeader("ETag", tag);
    if (EntityTag.matches(ctx.header("If-None-Match"), tag)) {
      coding(ctx, body);
      ctx.res().setStatus(304);
    } else {
      write(ctx, 200, contentType, body);
    }
  }
}
