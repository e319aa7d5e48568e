package org.footwell.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.javalin.http.Context;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.footwell.recording.RecordingRules;

/**
 * Takes in requests with recordings, as JSON or as multipart/form-data with WAV files. They are large,
 * so only a few are held at a time: the others wait a moment, then are told to come again.
 */
final class Intake {

  static final String MULTIPART = "multipart/form-data";

  private static final String JSON = "application/json";

  private final int smallBytes;
  private final int mostBytes;
  private final long waitMs;
  private final Semaphore large;

  Intake(Settings settings) {
    this.smallBytes = settings.bodyBytes();
    this.mostBytes = settings.uploadBytes();
    this.waitMs = settings.deadline().toMillis();
    this.large = new Semaphore(settings.uploads(), true);
  }

  /** Reads a request into untyped form and has it answered while its memory is accounted for. */
  <T> T answer(Context ctx, Function<Object, T> answer) {
    HttpServletRequest request = ctx.req();
    String type = Exchange.mediaType(request.getContentType());
    if (!type.equals(JSON) && !type.equals(MULTIPART)) {
      throw ProblemException.of(
          ProblemType.WRONG_CONTENT_TYPE,
          "Send JSON with the header Content-Type: "
              + JSON
              + ", or WAV files with "
              + MULTIPART
              + (type.isEmpty() ? "." : ", not " + type + "."));
    }
    long length = request.getContentLengthLong();
    if (length > mostBytes) {
      throw Exchange.tooLarge(mostBytes);
    }
    boolean small = length >= 0 && length <= smallBytes;
    if (!small) {
      acquire();
    }
    try {
      return answer.apply(read(request, type));
    } finally {
      if (!small) {
        large.release();
      }
    }
  }

  private void acquire() {
    try {
      if (large.tryAcquire(waitMs, TimeUnit.MILLISECONDS)) {
        return;
      }
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
    }
    throw ProblemException.of(
        ProblemType.BUSY, "Too many recordings are being sent at once; try again in a moment.");
  }

  private Object read(HttpServletRequest request, String type) {
    try (InputStream in = new BodyLimit(request.getInputStream(), mostBytes)) {
      Object untyped;
      if (type.equals(JSON)) {
        untyped = UntypedJson.read(in, RecordingRules.MOST_SAMPLES_IN_ALL);
      } else {
        Upload upload = Upload.read(in, request.getContentType(), smallBytes);
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
