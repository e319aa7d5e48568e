package org.footwell.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.footwell.Answers;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Shape;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.signal.ExponentialSweep;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Recordings without any noise, of exact tones, or silent in parts: each calculation that takes
 * recordings answers, or says which recording it cannot use.
 */
@Tag("long")
class NoiseFreeRecordingsIT {

  private static final double RATE = 48_000;

  private static final int LONG_ENOUGH_FOR_BASS = 96_000;

  private static final double[] SWEEP = new ExponentialSweep(50, 20_000, 0.1).signal(RATE);

  private static Map<String, float[]> signals() {
    Map<String, float[]> all = new LinkedHashMap<>();
    all.put("click", MadeUpResponse.click(4800, 480, 0.5).samples());
    all.put("click at the start", MadeUpResponse.click(4800, 0, 0.5).samples());
    all.put("click at the end", MadeUpResponse.click(4800, 4799, -0.5).samples());
    all.put("shortest", MadeUpResponse.click(64, 3, 0.5).samples());
    all.put("two clicks that cancel in bands", pair(4800, 480, 1000));
    all.put("tone of whole periods", tone(4800, 100));
    all.put("tone at half the rate", tone(4800, RATE / 2));
    all.put("level without a tone", filled(4800, 0.25f));
    all.put("tone, then silence", half(tone(9600, 100)));
    all.put("sweep", padded(SWEEP));
    all.put("silence", new float[4800]);
    return all;
  }

  private static float[] pair(int size, int at, int later) {
    return MadeUpResponse.click(size, at, 0.5).reflected(-1, later).samples();
  }

  private static float[] tone(int size, double hz) {
    float[] wave = new float[size];
    for (int n = 0; n < size; n++) {
      wave[n] = (float) (0.5 * Math.cos(2 * Math.PI * hz * n / RATE));
    }
    return wave;
  }

  private static float[] filled(int size, float value) {
    float[] wave = new float[size];
    Arrays.fill(wave, value);
    return wave;
  }

  private static float[] half(float[] wave) {
    Arrays.fill(wave, wave.length / 2, wave.length, 0);
    return wave;
  }

  private static float[] padded(double[] signal) {
    float[] wave = new float[signal.length + 4800];
    for (int n = 0; n < signal.length; n++) {
      wave[n] = (float) (0.5 * signal[n]);
    }
    return wave;
  }

  /** Silence after it, to so many samples. */
  private static float[] longer(float[] wave, int size) {
    return Arrays.copyOf(wave, Math.max(size, wave.length));
  }

  private static Map<String, Object> recording(float[] wave) {
    List<Double> samples = new ArrayList<>();
    for (float sample : wave) {
      samples.add((double) sample);
    }
    return Map.of("rate_hz", RATE, "samples", samples);
  }

  /** A request about two recordings, by what the calculation asks for. */
  private static Map<String, Object> request(String id, float[] one, float[] other, boolean sweep) {
    Map<String, Object> request = new LinkedHashMap<>();
    int size = id.equals("bass-rolloff") ? LONG_ENOUGH_FOR_BASS : 0;
    List<Map<String, Object>> steps =
        List.of(
            Map.of("volume_step", 10, "recording", recording(longer(one, size))),
            Map.of("volume_step", 20, "recording", recording(longer(other, size))));
    switch (id) {
      case "signal-sum" ->
          request.put(
              "outputs",
              List.of(
                  Map.of("id", "a", "impulse_response", recording(one)),
                  Map.of("id", "b", "impulse_response", recording(other))));
      case "bass-rolloff" -> {
        request.put("captures", steps);
        request.put("lowest_hz", 50);
      }
      case "clip-point" -> {
        request.put("captures", steps);
        request.put("terminals", "open");
      }
      default -> {
        request.put("kind", sweep ? "sweep" : "impulse_response");
        if (sweep) {
          request.put("sweep", Map.of("from_hz", 50, "to_hz", 20_000, "duration_s", 0.1));
        }
        request.put("channels", List.of(Map.of("id", "a"), Map.of("id", "b")));
        request.put("microphones", List.of(Map.of("id", "m")));
        request.put(
            "recordings",
            List.of(
                Map.of("channel", "a", "microphone", "m", "recording", recording(one)),
                Map.of("channel", "b", "microphone", "m", "recording", recording(other))));
        if (id.equals("arrival-times")) {
          request.put("time_reference", "common_start");
        } else if (id.equals("response-correction")) {
          request.put("processor_rate_hz", RATE);
        } else if (id.equals("loudspeaker-sum")) {
          request.put("crossover_hz", 1500);
        }
      }
    }
    return request;
  }

  /** Codes and pointers of faults; empty if it was answered. */
  private static <Q extends Record, R extends Record> List<Fault> faults(
      Calculation<Q, R> calculation, Map<String, Object> request) {
    try {
      Answers.of(calculation, new Engine().bind(calculation.card().request(), request, false));
      return List.of();
    } catch (Refused refused) {
      return refused.faults();
    }
  }

  @Test
  void everyCalculationAnswersOrNamesTheRecording() {
    TreeSet<String> answered = new TreeSet<>();
    TreeSet<String> wrong = new TreeSet<>();
    float[] click = MadeUpResponse.click(4800, 240, 0.5).samples();
    for (Calculation<?, ?> calculation : Calculations.all()) {
      String id = calculation.card().id();
      if (!Shape.of(calculation.card().request()).holdsSeries() || id.equals("plan-review")) {
        continue;
      }
      signals()
          .forEach(
              (name, wave) -> {
                for (float[] other : new float[][] {wave, click}) {
                  for (boolean sweep : new boolean[] {false, true}) {
                    List<Fault> faults = faults(calculation, request(id, wave, other, sweep));
                    if (faults.isEmpty()) {
                      answered.add(id);
                    }
                    for (Fault fault : faults) {
                      if (fault.pointer().isEmpty() || fault.code().equals("not-finite")) {
                        wrong.add(id + ": " + name + ": " + fault);
                      }
                    }
                  }
                }
              });
    }
    assertEquals(new TreeSet<>(), wrong);
    assertEquals(7, answered.size(), answered::toString);
  }
}
