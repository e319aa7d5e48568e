package org.footwell.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.javalin.http.Context;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Supplier;
import org.footwell.calculation.Series;
import org.footwell.recording.RecordingRules;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Takes in requests with recordings, as JSON or as multipart/form-data with WAV files. They are large,
 * so only a few are held at a time, and of those with long recordings fewer still are calculated at a
 * time: the others wait a moment, then are told to come again.
 */
final class Intake {

  private static final Logger LOG = LoggerFactory.getLogger(Intake.class);

  static final String MULTIPART = "multipart/form-data";

  private static final String JSON = "application/json";

  /** A longer recording counts as long: its transforms are as large as all that is held beside it. */
  private static final int LONG_SAMPLES = 1 << 19;

  /** Heap for one calculation on long recordings, with the requests held beside it. */
  private static final long HEAP_EACH = 256L << 20;

  private final int smallBytes;
  private final int mostBytes;
  private final long waitMs;
  private final Semaphore large;
  private final Semaphore lengthy;

  Intake(Settings settings) {
    this.smallBytes = settings.bodyBytes();
    this.mostBytes = settings.uploadBytes();
    this.waitMs = settings.deadline().toMillis();
    this.large = new Semaphore(settings.uploads(), true);
    int atATime = (int) Math.max(1, Runtime.getRuntime().maxMemory() / HEAP_EACH);
    this.lengthy = new Semaphore(atATime, true);
  }

  /** Reads a request into untyped form and has it answered while its memory is accounted for. */
  <T> T answer(Context ctx, Function<Object, T> answer) {
    HttpServletRequest request = ctx.req();
    String type = Exchange.mediaType(Exchange.contentType(request));
    if (!type.equals(JSON) && !type.equals(MULTIPART)) {
      throw ProblemException.of(
          ProblemType.WRONG_CONTENT_TYPE,
          "Send JSON with the header Content-Type: "
              + JSON
              + ", or WAV files with "
              + MULTIPART
              + (type.isEmpty() ? "." : ", not " + type + "."));
    }
    Exchange.requirePlain(request);
    long length = request.getContentLengthLong();
    if (length > mostBytes) {
      throw Exchange.tooLarge(mostBytes);
    }
    boolean small = length >= 0 && length <= smallBytes;
    try {
      return small ? held(request, type, answer) : one(large, () -> held(request, type, answer));
    } catch (OutOfMemoryError tooMuchAtOnce) {
      LOG.error(
          "not enough memory for a request with recordings: give the heap more", tooMuchAtOnce);
      throw ProblemException.of(
          ProblemType.BUSY,
          "There is not enough memory for so many samples just now; try again in a moment, or send"
              + " fewer or shorter recordings.");
    }
  }

  private <T> T held(HttpServletRequest request, String type, Function<Object, T> answer) {
    Object untyped = read(request, type);
    return holdsLong(untyped) ? one(lengthy, () -> answer.apply(untyped)) : answer.apply(untyped);
  }

  /** Does something that only a few may do at a time. */
  private <T> T one(Semaphore few, Supplier<T> task) {
    acquire(few);
    try {
      return task.get();
    } finally {
      few.release();
    }
  }

  private void acquire(Semaphore few) {
    try {
      if (few.tryAcquire(waitMs, TimeUnit.MILLISECONDS)) {
        return;
      }
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
    }
    throw ProblemException.of(
        ProblemType.BUSY, "Too many recordings are being sent at once; try again in a moment.");
  }

  private static boolean holdsLong(Object node) {
    if (node instanceof Series samples) {
      return samples.size() > LONG_SAMPLES;
    }
    Collection<?> inside =
        node instanceof Map<?, ?> map
            ? map.values()
            : node instanceof List<?> list ? list : List.of();
    return inside.stream().anyMatch(Intake::holdsLong);
  }

  private Object read(HttpServletRequest request, String type) {
    try (InputStream in = new BodyLimit(request.getInputStream(), mostBytes)) {
      Object untyped;
      if (type.equals(JSON)) {
        untyped = UntypedJson.read(in, RecordingRules.MOST_SAMPLES_IN_ALL);
      } else {
        Upload upload = Upload.read(in, Exchange.contentType(request), smallBytes);
        untyped = upload.request(RecordingRules.MOST_SAMPLES_IN_ALL);
        UploadedFiles.place(untyped, upload.files());
      }
      if (untyped == null) {
        throw ProblemException.of(ProblemType.UNREADABLE, "The request is empty or null.");
      }
      return untyped;
    } catch (JsonProcessingException malformed) {
      throw ProblemException.of(ProblemType.UNREADABLE, Endpoint.malformedDetail(malformed));
    } catch (IOException brokenOff) {
      throw ProblemException.of(ProblemType.UNREADABLE, "The body breaks off.");
    }
  }
}
