package org.footwell.measured.response;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.net.URI;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.StringJoiner;
import java.util.TreeMap;
import org.footwell.measured.arrival.ArrivalTimes;
import org.footwell.measured.arrival.ArrivalTimesRequest;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Series;
import org.footwell.measured.correction.ResponseCorrection;
import org.footwell.measured.correction.ResponseCorrectionRequest;
import org.footwell.recording.WavBytes;
import org.footwell.recording.WavBytes.Kind;
import org.footwell.web.UploadBody;

/**
 * Arrivals and correction of one measuring session, one after the other in one process, the first time
 * and then warm: six microphones by eight channels, 1 s at 48 kHz, seeded. With an address of a running
 * service the same is sent as WAV files, one for each channel, and timed from the first byte to the
 * last of the answer.
 */
public final class SessionTiming {

  private static final int CHANNELS = 8;
  private static final int MICROPHONES = 6;
  private static final int ROUNDS = 6;

  private SessionTiming() {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    Map<String, float[][]> heard = heard();
    if (arguments.length > 0) {
      overHttp(URI.create(arguments[0]), heard);
    } else {
      inProcess(heard);
    }
  }

  /** A response for every channel and microphone: a band of sound, reflections, noise 60 dB below. */
  private static Map<String, float[][]> heard() {
    Random random = new Random(1);
    Map<String, float[][]> heard = new TreeMap<>();
    for (int c = 0; c < CHANNELS; c++) {
      float[][] positions = new float[MICROPHONES][];
      double slow = c == 0 ? 0.01 : c < 3 ? 0.1 : 0.5;
      for (int m = 0; m < MICROPHONES; m++) {
        MadeUpResponse response = MadeUpResponse.click(48_000, 1500 + 40 * c + 10 * m, 0.5);
        // A resonance as a loudspeaker's lower end, and its upper.
        response =
            response.through(
                slow, 0, -slow, 1, -2 * Math.exp(-slow) * Math.cos(slow), Math.exp(-2 * slow));
        for (int r = 0; r < 4; r++) {
          response = response.reflected(random.nextDouble() - 0.5, 20 + random.nextInt(400));
        }
        positions[m] = response.noisy(0.0003, 100L * c + m).samples();
      }
      heard.put("c" + c, positions);
    }
    return heard;
  }

  private static String request(String special, boolean files, String channelExtra) {
    StringJoiner channels = new StringJoiner(",");
    StringJoiner microphones = new StringJoiner(",");
    StringJoiner recordings = new StringJoiner(",");
    for (int c = 0; c < CHANNELS; c++) {
      channels.add("{\"id\":\"c" + c + "\"" + channelExtra + "}");
      for (int m = 0; m < MICROPHONES; m++) {
        String recording = files ? "{\"wav\":\"c" + c + "\",\"channel\":" + m + "}" : "{}";
        recordings.add(
            "{\"channel\":\"c%d\",\"microphone\":\"m%d\",\"recording\":%s}"
                .formatted(c, m, recording));
      }
    }
    for (int m = 0; m < MICROPHONES; m++) {
      microphones.add("{\"id\":\"m" + m + "\"}");
    }
    return """
        {"kind":"impulse_response",%s,"channels":[%s],"microphones":[%s],"recordings":[%s]}
        """
        .formatted(special, channels, microphones, recordings);
  }

  private static final String ARRIVALS = "\"time_reference\":\"common_start\"";
  private static final String CORRECTION = "\"processor_rate_hz\":48000";
  private static final String RANGE = ",\"from_hz\":60,\"to_hz\":12000";

  private static void overHttp(URI service, Map<String, float[][]> heard)
      throws IOException, InterruptedException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    heard.forEach((name, positions) -> files.put(name, WavBytes.of(Kind.INT24, 48_000, positions)));
    UploadBody arrivals = new UploadBody(request(ARRIVALS, true, ""), files);
    UploadBody correction = new UploadBody(request(CORRECTION, true, RANGE), files);
    for (int round = 0; round < ROUNDS; round++) {
      double one = sent(service, "/v1/arrival-times", arrivals);
      double other = sent(service, "/v1/response-correction", correction);
      tell(round, one, other);
    }
  }

  private static double sent(URI service, String path, UploadBody body)
      throws IOException, InterruptedException {
    long start = System.nanoTime();
    HttpResponse<String> answer = body.post(service, path);
    double ms = (System.nanoTime() - start) / 1e6;
    if (answer.statusCode() != 200) {
      throw new IllegalStateException(answer.body());
    }
    return ms;
  }

  private static void inProcess(Map<String, float[][]> heard) throws IOException {
    Engine engine = new Engine();
    ArrivalTimesRequest arrivals =
        bound(engine, ArrivalTimesRequest.class, request(ARRIVALS, false, ""), heard);
    ResponseCorrectionRequest correction =
        bound(engine, ResponseCorrectionRequest.class, request(CORRECTION, false, RANGE), heard);
    for (int round = 0; round < ROUNDS; round++) {
      long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      double one = computed(engine, new ArrivalTimes(), arrivals);
      double other = computed(engine, new ResponseCorrection(), correction);
      cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu;
      tell(round, one, other);
      // On a busy machine this is what a quiet one would take.
      System.out.printf(Locale.ROOT, "       on the processor %.0f ms of that%n", cpu / 1e6);
    }
    System.out.printf(
        Locale.ROOT,
        "highest heap in use %.0f MB of %.0f%n",
        peakMb(),
        Runtime.getRuntime().maxMemory() / 1e6);
  }

  @SuppressWarnings("unchecked") // the maps of the untyped reader have texts for keys
  private static <Q extends Record> Q bound(
      Engine engine, Class<Q> type, String request, Map<String, float[][]> heard)
      throws IOException {
    Map<String, Object> untyped = new ObjectMapper().readValue(request, LinkedHashMap.class);
    for (Object take : (Iterable<Object>) untyped.get("recordings")) {
      Map<String, Object> fields = (Map<String, Object>) take;
      int microphone = Integer.parseInt(((String) fields.get("microphone")).substring(1));
      Map<String, Object> recording = (Map<String, Object>) fields.get("recording");
      recording.put("rate_hz", 48_000.0);
      recording.put("samples", Series.of(heard.get(fields.get("channel"))[microphone]));
    }
    return engine.bind(type, untyped, false);
  }

  private static <Q extends Record, R extends Record> double computed(
      Engine engine, Calculation<Q, R> calculation, Q request) {
    long start = System.nanoTime();
    engine.answer(calculation, request, false, Duration.ofSeconds(60));
    return (System.nanoTime() - start) / 1e6;
  }

  private static void tell(int round, double arrivals, double correction) {
    System.out.printf(
        Locale.ROOT,
        "%-5s  arrival-times %5.0f ms  response-correction %5.0f ms  together %5.0f ms%n",
        round == 0 ? "first" : "then",
        arrivals,
        correction,
        arrivals + correction);
  }

  private static double peakMb() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .map(MemoryPoolMXBean::getPeakUsage)
            .mapToLong(usage -> usage.getUsed())
            .sum()
        / 1e6;
  }
}
