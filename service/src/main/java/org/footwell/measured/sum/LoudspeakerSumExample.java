package org.footwell.measured.sum;

import java.util.Locale;
import java.util.StringJoiner;

/** The worked example of the card: two short made-up impulse responses. */
final class LoudspeakerSumExample {

  private static final int SAMPLES = 96;

  private LoudspeakerSumExample() {}

  static String json() {
    return """
    {"kind": "impulse_response", "crossover_hz": 4000,
     "channels": [{"id": "left midrange"}, {"id": "left tweeter"}],
     "microphones": [{"id": "head"}],
     "recordings": [
       {"channel": "left midrange", "microphone": "head",
        "recording": {"rate_hz": 48000, "samples": [%s]}},
       {"channel": "left tweeter", "microphone": "head",
        "recording": {"rate_hz": 48000, "samples": [%s]}}],
     "gate": {"before_ms": 0.4, "after_ms": 1.5}}
    """
        .formatted(pulse(24, 0.7), pulse(30, -0.6));
  }

  /** A damped pulse, to four decimals. */
  private static String pulse(int start, double height) {
    StringJoiner samples = new StringJoiner(",");
    for (int n = 0; n < SAMPLES; n++) {
      int since = n - start;
      double value = since < 0 ? 0 : height * Math.exp(-0.55 * since) * Math.cos(0.9 * since);
      String text = String.format(Locale.ROOT, "%.4f", value);
      samples.add(Double.parseDouble(text) == 0 ? "0" : text);
    }
    return samples.toString();
  }
}
