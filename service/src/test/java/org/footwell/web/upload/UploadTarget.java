package org.footwell.web.upload;

import static org.footwell.fuzz.Refusals.requireEqual;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.footwell.calculation.Engine;
import org.footwell.fuzz.Refusals;
import org.footwell.fuzz.Target;
import org.footwell.measured.arrival.ArrivalTimes;
import org.footwell.recording.Wav;
import org.footwell.recording.WavBytes;
import org.footwell.recording.WavBytes.Kind;
import org.footwell.recording.WavReader;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;

/** Requests with recordings in parts: the same in whatever portions they come, and bound or refused. */
public final class UploadTarget implements Target {

  private static final String TYPE = "multipart/form-data; boundary=\"x-y\"";
  private static final int MOST = 100_000;
  private static final int[] PORTIONS = {1, 7, 64};

  private final Engine engine = new Engine();

  @Override
  public void read(byte[] given) throws Exception {
    String whole = read(given, Math.max(1, given.length));
    for (int portion : PORTIONS) {
      requireEqual(whole, read(given, portion), "in portions of " + portion);
    }
  }

  /** What was read, in words. */
  private String read(byte[] given, int portion) throws Exception {
    try (UploadMemory.Share share = new UploadMemory(256 << 20, 1).share(given.length)) {
      Object told = Refusals.orNull(() -> told(given, portion, share));
      return told == null ? "refused" : told.toString();
    }
  }

  private Object told(byte[] given, int portion, UploadMemory.Share share) throws IOException {
    Upload upload = Upload.read(new Drip(given, portion), TYPE, MOST, share);
    Map<String, Object> told = new TreeMap<>();
    upload.files().forEach((name, file) -> told.put("file " + name, heard(file)));
    Object request = request(upload);
    told.put("request", String.valueOf(request));
    UploadedFiles.place(request, upload.files());
    engine.bind(new ArrivalTimes().card().request(), request, false);
    return told;
  }

  private static Object request(Upload upload) throws IOException {
    try {
      return upload.request();
    } catch (JsonProcessingException malformed) {
      throw ProblemException.of(ProblemType.UNREADABLE, Endpoint.malformed(malformed));
    }
  }

  private static String heard(WavReader file) {
    try {
      Wav wav = file.finish();
      return wav.rateHz() + " Hz, " + wav.channels();
    } catch (Wav.Unreadable unreadable) {
      return unreadable.fault().toString();
    }
  }

  @Override
  public List<byte[]> seeds() {
    String request =
        """
        {"kind": "impulse_response", "time_reference": "common_start",
         "channels": [{"id": "a"}], "microphones": [{"id": "m"}],
         "recordings": [{"channel": "a", "microphone": "m", "recording": {"wav": "x"}}]}
        """;
    List<byte[]> seeds = new ArrayList<>();
    byte[] wav = WavBytes.of(Kind.INT16, 48_000, new float[] {0, 0.5f, -0.25f});
    seeds.add(body(part("request", request.getBytes(StandardCharsets.UTF_8)), part("x", wav)));
    seeds.add(
        body(part("x", wav), part("request", "{\"a\": [1, 2]}".getBytes(StandardCharsets.UTF_8))));
    return seeds;
  }

  private static byte[] part(String name, byte[] content) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(
        "--x-y\r\nContent-Disposition: form-data; name=\"%s\"\r\n\r\n"
            .formatted(name)
            .getBytes(StandardCharsets.US_ASCII));
    out.writeBytes(content);
    out.writeBytes(new byte[] {'\r', '\n'});
    return out.toByteArray();
  }

  private static byte[] body(byte[]... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      out.writeBytes(part);
    }
    out.writeBytes("--x-y--\r\n".getBytes(StandardCharsets.US_ASCII));
    return out.toByteArray();
  }
}
