package org.footwell.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.footwell.recording.WavBytes;
import org.footwell.recording.WavBytes.Kind;
import org.footwell.signal.ExponentialSweep;

/** For every calculation that takes recordings, the largest request of a kind that it answers. */
public final class LargestUploads {

  static final int RATE_HZ = 192_000;

  /** 10.4 s: six of them are as many samples as a request may hold. */
  public static final int SAMPLES = 2_000_000;

  public static final int MOST_RECORDINGS = 6;

  private LargestUploads() {}

  /** Requests by the id of their calculation, each with so many recordings of so many samples. */
  public static Map<String, UploadBody> of(int recordings, int samples) {
    double sweepS = (samples - RATE_HZ / 10) / (double) RATE_HZ;
    byte[] sweep = WavBytes.of(Kind.INT16, RATE_HZ, sweep(samples, sweepS));
    byte[] noise = WavBytes.of(Kind.INT16, RATE_HZ, noise(samples));
    byte[] tone = WavBytes.of(Kind.INT16, RATE_HZ, tone(samples));
    Map<String, UploadBody> all = new LinkedHashMap<>();
    for (String id : List.of("arrival-times", "level-and-balance", "response-correction")) {
      all.put(id, upload(takes(1, recordings, sweepS, more(id)), sweep, recordings));
    }
    String sum = takes(2, recordings / 2, sweepS, "\"crossover_hz\": 1000,");
    all.put("loudspeaker-sum", upload(sum, sweep, recordings));
    all.put("bass-rolloff", upload(steps("", recordings), noise, recordings));
    all.put(
        "clip-point",
        upload(steps("\"tone_hz\": 1000, \"terminals\": \"open\",", recordings), tone, recordings));
    all.put("signal-sum", upload(outputs(recordings), sweep, recordings));
    return all;
  }

  private static String more(String id) {
    return switch (id) {
      case "arrival-times" -> "\"time_reference\": \"common_start\",";
      case "response-correction" -> "\"processor_rate_hz\": 48000,";
      default -> "";
    };
  }

  private static UploadBody upload(String request, byte[] file, int recordings) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (int i = 0; i < recordings; i++) {
      files.put("f" + i, file);
    }
    return new UploadBody(request, files);
  }

  private static String list(int count, String format) {
    return IntStream.range(0, count)
        .mapToObj(i -> format.replace("#", Integer.toString(i)))
        .collect(Collectors.joining(",", "[", "]"));
  }

  private static String takes(int channels, int microphones, double sweepS, String more) {
    List<String> recordings = new ArrayList<>();
    for (int c = 0; c < channels; c++) {
      for (int m = 0; m < microphones; m++) {
        recordings.add(
            "{\"channel\": \"c%d\", \"microphone\": \"m%d\", \"recording\": {\"wav\": \"f%d\"}}"
                .formatted(c, m, c * microphones + m));
      }
    }
    return """
        {"kind": "sweep", "sweep": {"from_hz": 20, "to_hz": 20000, "duration_s": %s}, %s
         "channels": %s, "microphones": %s, "recordings": %s}
        """
        .formatted(
            sweepS,
            more,
            list(channels, "{\"id\": \"c#\"}"),
            list(microphones, "{\"id\": \"m#\"}"),
            recordings);
  }

  private static String steps(String more, int recordings) {
    return "{"
        + more
        + "\"captures\":"
        + list(recordings, "{\"volume_step\": #, \"recording\": {\"wav\": \"f#\"}}")
        + "}";
  }

  private static String outputs(int recordings) {
    return "{\"outputs\":"
        + list(recordings, "{\"id\": \"o#\", \"impulse_response\": {\"wav\": \"f#\"}}")
        + "}";
  }

  private static float[] sweep(int samples, double seconds) {
    float[] recording = new float[samples];
    double[] sweep = new ExponentialSweep(20, 20_000, seconds).signal(RATE_HZ);
    for (int n = 0; n < sweep.length; n++) {
      recording[2000 + n] = (float) (0.5 * sweep[n]);
    }
    return recording;
  }

  private static float[] noise(int samples) {
    float[] recording = new float[samples];
    Random random = new Random(1);
    for (int n = 0; n < samples; n++) {
      recording[n] = (float) (0.1 * random.nextGaussian());
    }
    return recording;
  }

  private static float[] tone(int samples) {
    float[] recording = new float[samples];
    for (int n = 0; n < samples; n++) {
      recording[n] = (float) (0.5 * Math.sin(2 * Math.PI * 1000 * n / RATE_HZ));
    }
    return recording;
  }
}
