package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.footwell.RunningJar;
import org.footwell.recording.WavBytes;
import org.footwell.recording.WavBytes.Kind;
import org.footwell.signal.ExponentialSweep;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What uploads cost the built service: memory within its heap, and nothing on disk. */
@Tag("long")
class LargestUploadsIT {

  private static final int RATE_HZ = 192_000;
  private static final int POSITIONS = 6;

  /** As many samples for each position as the whole of a request may hold. */
  private static final int SAMPLES = 2_000_000;

  private static final String[] HEAP_AS_DOCUMENTED = {"-Xmx256m", "-XX:+UseSerialGC"};

  /** Sweeps of 8 s at 192 kHz, 12,000,000 samples in all: the largest that is taken. */
  private static UploadBody largest() {
    float[] recording = new float[SAMPLES];
    double[] sweep = new ExponentialSweep(20, 20_000, 8).signal(RATE_HZ);
    for (int n = 0; n < sweep.length; n++) {
      recording[2000 + n] = (float) (0.5 * sweep[n]);
    }
    byte[] file = WavBytes.of(Kind.INT16, RATE_HZ, recording);
    StringBuilder microphones = new StringBuilder();
    StringBuilder recordings = new StringBuilder();
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (int m = 0; m < POSITIONS; m++) {
      String comma = m == 0 ? "" : ",";
      microphones.append(comma).append("{\"id\": \"m%d\"}".formatted(m));
      recordings
          .append(comma)
          .append(
              "{\"channel\": \"a\", \"microphone\": \"m%d\", \"recording\": {\"wav\": \"f%d\"}}"
                  .formatted(m, m));
      files.put("f" + m, file);
    }
    String request =
        """
        {"kind": "sweep", "sweep": {"from_hz": 20, "to_hz": 20000, "duration_s": 8},
         "time_reference": "common_start", "channels": [{"id": "a"}],
         "microphones": [%s], "recordings": [%s]}
        """
            .formatted(microphones, recordings);
    return new UploadBody(request, files);
  }

  private static void assertStillAnswers(RunningJar service) throws Exception {
    assertEquals(
        200, UploadBody.json(service.address(), SoundLevelCalls.PATH, SoundLevelCalls.GOOD));
  }

  @Test
  void twoOfTheLargestAtOnceAreAnsweredOrToldToComeAgain() throws Exception {
    try (RunningJar service = new RunningJar(HEAP_AS_DOCUMENTED)) {
      UploadBody largest = largest();
      List<CompletableFuture<HttpResponse<String>>> both =
          List.of(
              largest.postLater(service.address(), "/v1/arrival-times"),
              largest.postLater(service.address(), "/v1/arrival-times"));
      int answered = 0;
      for (CompletableFuture<HttpResponse<String>> one : both) {
        HttpResponse<String> response = one.get();
        answered += response.statusCode() == 200 ? 1 : 0;
        assertTrue(List.of(200, 503).contains(response.statusCode()), response.body());
      }
      assertTrue(answered > 0, "at least one is answered");
      assertEquals(200, largest.post(service.address(), "/v1/arrival-times").statusCode());
      assertStillAnswers(service);
    }
  }

  @Test
  void whatNeverFitsIntoTheMemoryIsTooLargeAndTheServiceGoesOn() throws Exception {
    try (RunningJar service = new RunningJar("-Xmx72m", "-XX:+UseSerialGC")) {
      HttpResponse<String> response = largest().post(service.address(), "/v1/arrival-times");
      assertEquals(413, response.statusCode(), response.body());
      assertTrue(
          response.body().contains("do not fit into the memory of this service"), response.body());
      assertStillAnswers(service);
    }
  }

  /** Every kind of file that cannot be used, with its fault. */
  private static Map<String, Map<String, byte[]>> bad() {
    float[] pulse = new float[4800];
    for (int n = 1000; n < pulse.length; n++) {
      pulse[n] = (float) (0.7 * Math.exp(-0.5 * (n - 1000)) * Math.cos(0.8 * (n - 1000)));
    }
    float[] clipped = pulse.clone();
    Arrays.fill(clipped, 1000, 1010, 1);
    byte[] good = WavBytes.of(Kind.INT16, 48_000, pulse);
    Map<String, Map<String, byte[]>> bad = new LinkedHashMap<>();
    bad.put("not-a-wav-file", both("an image, perhaps".getBytes(StandardCharsets.US_ASCII), good));
    bad.put("wav-truncated", both(Arrays.copyOf(good, good.length / 2), good));
    bad.put("recording-silent", both(WavBytes.of(Kind.INT16, 48_000, new float[4800]), good));
    bad.put("recording-clipped", both(WavBytes.of(Kind.INT16, 48_000, clipped), good));
    bad.put("sample-rates-mixed", both(good, WavBytes.of(Kind.INT16, 44_100, pulse)));
    bad.put("", both(good, good));
    return bad;
  }

  private static Map<String, byte[]> both(byte[] one, byte[] other) {
    return Map.of("x", one, "y", other);
  }

  @Test
  void nothingOfAnUploadTouchesTheDisk(@TempDir Path folder) throws Exception {
    String request =
        """
        {"kind": "impulse_response", "time_reference": "common_start",
         "channels": [{"id": "a"}, {"id": "b"}], "microphones": [{"id": "m"}],
         "recordings": [{"channel": "a", "microphone": "m", "recording": {"wav": "x"}},
                        {"channel": "b", "microphone": "m", "recording": {"wav": "y"}}]}
        """;
    try (RunningJar service =
            new RunningJar("-Xmx256m", "-XX:+UseSerialGC", "-Djava.io.tmpdir=" + folder);
        WatchService watch = folder.getFileSystem().newWatchService()) {
      List<Path> before = inside(folder);
      WatchKey created = folder.register(watch, StandardWatchEventKinds.ENTRY_CREATE);
      for (Map.Entry<String, Map<String, byte[]>> one : bad().entrySet()) {
        HttpResponse<String> response =
            new UploadBody(request, one.getValue()).post(service.address(), "/v1/arrival-times");
        assertEquals(one.getKey().isEmpty() ? 200 : 422, response.statusCode(), response.body());
        assertTrue(response.body().contains(one.getKey()), response.body());
      }
      assertEquals(200, largest().post(service.address(), "/v1/arrival-times").statusCode());
      assertTrue(tooLargeIsCutOff(service), "100 MB are not taken");
      assertStillAnswers(service);
      assertEquals(before, inside(folder));
      assertEquals(List.of(), created.pollEvents().stream().map(event -> event.context()).toList());
    }
  }

  private static boolean tooLargeIsCutOff(RunningJar service) throws InterruptedException {
    try {
      return UploadBody.endless(service.address(), "/v1/arrival-times", 100 << 20).statusCode()
          == 413;
    } catch (IOException cutOff) {
      return true;
    }
  }

  private static List<Path> inside(Path folder) throws IOException {
    try (var all = Files.walk(folder)) {
      return all.sorted().toList();
    }
  }
}
