package org.footwell.web.upload;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.MultiPart;
import org.eclipse.jetty.io.Content;
import org.footwell.calculation.text.Phrase;
import org.footwell.recording.RecordingRules;
import org.footwell.recording.WavReader;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;

/**
 * A multipart/form-data body, read as it comes: the part {@code request} in JSON, every other part a
 * WAV file that becomes samples at once. Nothing is written to disk, and no file is held as such.
 */
final class Upload {

  static final String REQUEST = "request";

  /** Every recording and its loopback in a file of its own, and the request. */
  static final int MOST_PARTS = 129;

  private static final int PART_HEADERS_BYTES = 4096;
  private static final int BUFFER = 64 * 1024;

  private final int requestBytes;
  private final UploadMemory.Share share;
  private final Map<String, WavReader> files = new LinkedHashMap<>();
  private ByteArrayOutputStream request;

  private Upload(int requestBytes, UploadMemory.Share share) {
    this.requestBytes = requestBytes;
    this.share = share;
  }

  /**
   * Reads a body.
   *
   * @param contentType its Content-Type header with the boundary
   * @param requestBytes largest request part
   * @param share of memory that it takes
   */
  static Upload read(InputStream in, String contentType, int requestBytes, UploadMemory.Share share)
      throws IOException {
    String boundary = MultiPart.extractBoundary(contentType);
    if (boundary == null || boundary.isBlank()) {
      throw ProblemException.of(ProblemType.UNREADABLE, ProblemWords.NO_BOUNDARY);
    }
    Upload upload = new Upload(requestBytes, share);
    Parts parts = upload.new Parts();
    MultiPart.Parser parser = new MultiPart.Parser(boundary, parts);
    parser.setMaxParts(MOST_PARTS);
    parser.setPartHeadersMaxLength(PART_HEADERS_BYTES);
    byte[] buffer = new byte[BUFFER];
    for (int n = in.read(buffer); n >= 0 && !parts.done(); n = in.read(buffer)) {
      parser.parse(Content.Chunk.from(ByteBuffer.wrap(buffer, 0, n), false));
    }
    if (!parts.done()) {
      parser.parse(Content.Chunk.EOF);
    }
    parts.requireWhole();
    return upload;
  }

  /** The request part in untyped form. */
  Object request() throws IOException {
    if (request == null) {
      throw ProblemException.of(
          ProblemType.UNREADABLE, Phrase.of(ProblemWords.NO_REQUEST_PART).own("part", REQUEST));
    }
    return SamplesInJson.read(new ByteArrayInputStream(request.toByteArray()), share);
  }

  /** The files by the names of their parts. */
  Map<String, WavReader> files() {
    return files;
  }

  private static ProblemException malformed(Phrase why) {
    return ProblemException.of(
        ProblemType.UNREADABLE, Phrase.of(ProblemWords.MALFORMED_FORM).with("why", why));
  }

  /** Takes what the parser finds. */
  private final class Parts extends MultiPart.AbstractPartsListener {
    private WavReader file;
    private boolean started;
    private boolean complete;
    private boolean failed;
    private ProblemException problem;
    private OutOfMemoryError outOfMemory;

    boolean done() {
      return complete || failed;
    }

    void requireWhole() {
      if (outOfMemory != null) {
        throw outOfMemory;
      }
      if (problem != null) {
        throw problem;
      }
      if (!complete) {
        throw malformed(
            failed
                ? Phrase.of(ProblemWords.BROKEN_PART).with("most", MOST_PARTS)
                : Phrase.nothing());
      }
    }

    // What the listener throws, the parser would swallow: it is kept, and thrown afterwards.

    @Override
    public void onPartContent(Content.Chunk chunk) {
      keeping(() -> take(chunk));
    }

    private void keeping(Runnable step) {
      if (failed) {
        return;
      }
      try {
        step.run();
      } catch (ProblemException refused) {
        problem = refused;
        failed = true;
      } catch (OutOfMemoryError tooMuchAtOnce) {
        // What was read so far is what memory is needed for now.
        files.clear();
        file = null;
        outOfMemory = tooMuchAtOnce;
        failed = true;
      }
    }

    private void take(Content.Chunk chunk) {
      start();
      if (file != null) {
        content(chunk.getByteBuffer());
      } else if (request != null) {
        ByteBuffer bytes = chunk.getByteBuffer();
        if (request.size() + bytes.remaining() > requestBytes) {
          throw ProblemException.of(
              ProblemType.TOO_LARGE,
              Phrase.of(ProblemWords.LARGE_REQUEST_PART)
                  .own("part", REQUEST)
                  .with("most", requestBytes));
        }
        share.hold(bytes.remaining());
        byte[] copy = new byte[bytes.remaining()];
        bytes.get(copy);
        request.writeBytes(copy);
      }
    }

    private void content(ByteBuffer bytes) {
      long before = file.heldBytes();
      file.accept(bytes);
      share.requireFits(Math.min(RecordingRules.MOST_SAMPLES, file.statedSamples()));
      share.hold(file.heldBytes() - before);
      long samples = files.values().stream().mapToLong(WavReader::samples).sum();
      if (samples > RecordingRules.MOST_SAMPLES_IN_ALL) {
        throw ProblemException.of(
            ProblemType.TOO_LARGE,
            Phrase.of(ProblemWords.FILES_HOLD_MORE)
                .with("most", RecordingRules.MOST_SAMPLES_IN_ALL));
      }
    }

    /** A part's name is known when its content begins, or when it ends without any. */
    private void start() {
      if (started) {
        return;
      }
      started = true;
      String name = getName();
      if (name == null || name.isBlank()) {
        throw malformed(Phrase.of(ProblemWords.NAMELESS_PART));
      }
      if (name.equals(REQUEST) ? request != null : files.containsKey(name)) {
        throw malformed(Phrase.of(ProblemWords.PARTS_OF_ONE_NAME));
      }
      if (name.equals(REQUEST)) {
        request = new ByteArrayOutputStream();
      } else {
        file = new WavReader();
        files.put(name, file);
      }
    }

    @Override
    public void onPart(String name, String fileName, HttpFields headers) {
      started = false;
      file = null;
    }

    @Override
    public void onPartEnd() {
      keeping(this::start);
      super.onPartEnd();
    }

    @Override
    public void onComplete() {
      complete = true;
    }

    @Override
    public void onFailure(Throwable failure) {
      failed = true;
    }
  }
}
