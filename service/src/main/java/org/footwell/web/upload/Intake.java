package org.footwell.web.upload;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.javalin.http.Context;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.footwell.calculation.Series;
import org.footwell.calculation.text.Phrase;
import org.footwell.recording.RecordingRules;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Exchange;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Takes in requests with recordings, as JSON or as multipart/form-data with WAV files. They are large,
 * so each is taken only where there is memory for it; otherwise it is told to come again, or that it
 * is too large for this service.
 */
public final class Intake {

  private static final Logger LOG = LoggerFactory.getLogger(Intake.class);

  /** Files and the request beside them. */
  public static final int MOST_PARTS = Upload.MOST_PARTS;

  public static final int MOST_SAMPLES = RecordingRules.MOST_SAMPLES_IN_ALL;

  static final String MULTIPART = "multipart/form-data";

  private static final String JSON = "application/json";

  private final int requestBytes;
  private final int mostBytes;
  private final UploadMemory memory;

  /**
   * With its limits.
   *
   * @param requestBytes largest request beside its files
   * @param mostBytes largest body
   * @param deadline time a calculation may take
   */
  public Intake(int requestBytes, int mostBytes, Duration deadline) {
    this.requestBytes = requestBytes;
    this.mostBytes = mostBytes;
    this.memory = new UploadMemory(Runtime.getRuntime().maxMemory(), deadline.toMillis());
  }

  /** Reads a request into untyped form and has it answered while its memory is accounted for. */
  public <T> T answer(Context ctx, Function<Object, T> answer) {
    HttpServletRequest request = ctx.req();
    String type = Exchange.mediaType(Exchange.contentType(request));
    if (!type.equals(JSON) && !type.equals(MULTIPART)) {
      throw ProblemException.of(
          ProblemType.WRONG_CONTENT_TYPE,
          Phrase.of(ProblemWords.SEND_JSON_OR_FILES).with("other", Exchange.notOfType(type)));
    }
    long length = Exchange.statedLength(request);
    if (length > mostBytes) {
      throw Exchange.tooLarge(mostBytes);
    }
    try (UploadMemory.Share share = memory.share(length)) {
      Object untyped = read(ctx, type, share);
      return share.work(longest(untyped), () -> answer.apply(untyped));
    } catch (OutOfMemoryError tooMuchAtOnce) {
      LOG.error(
          "not enough memory for a request with recordings: give the heap more", tooMuchAtOnce);
      throw ProblemException.of(ProblemType.BUSY, ProblemWords.NO_MEMORY_FOR_SAMPLES);
    }
  }

  /** Samples of the longest recording. */
  private static int longest(Object node) {
    if (node instanceof Series samples) {
      return samples.size();
    }
    Collection<?> inside =
        node instanceof Map<?, ?> map
            ? map.values()
            : node instanceof List<?> list ? list : List.of();
    return inside.stream().mapToInt(Intake::longest).max().orElse(0);
  }

  private Object read(Context ctx, String type, UploadMemory.Share share) {
    try (InputStream in = new BodyLimit(Exchange.body(ctx), mostBytes)) {
      Object untyped;
      if (type.equals(JSON)) {
        untyped = SamplesInJson.read(in, share);
      } else {
        Upload upload = Upload.read(in, Exchange.contentType(ctx.req()), requestBytes, share);
        // What stands behind the last part is of no use, but a checksum of all may be there.
        in.transferTo(OutputStream.nullOutputStream());
        untyped = upload.request();
        UploadedFiles.place(untyped, upload.files());
      }
      if (untyped == null) {
        throw ProblemException.of(ProblemType.UNREADABLE, ProblemWords.EMPTY_OR_NULL);
      }
      return untyped;
    } catch (JsonProcessingException malformed) {
      throw ProblemException.of(ProblemType.UNREADABLE, Endpoint.malformed(malformed));
    } catch (NumberFormatException exponentTooLarge) {
      throw Endpoint.beyondLimits();
    } catch (IOException brokenOff) {
      throw ProblemException.of(ProblemType.UNREADABLE, ProblemWords.BREAKS_OFF);
    }
  }
}
