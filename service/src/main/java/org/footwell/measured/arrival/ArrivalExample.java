package org.footwell.measured.arrival;

import java.util.Locale;
import java.util.StringJoiner;

/** The worked example of the card: two short made-up impulse responses. */
final class ArrivalExample {

  private static final int SAMPLES = 96;

  /** Decay of the pulse per sample, and its turn. */
  private static final double DECAY = 0.55;

  private static final double TURN = 0.9;

  private ArrivalExample() {}

  static String json() {
    return """
    {"kind": "impulse_response", "time_reference": "common_start",
     "channels": [{"id": "left tweeter"}, {"id": "right tweeter", "chain_delay_ms": 0.1}],
     "microphones": [{"id": "head"}],
     "recordings": [
       {"channel": "left tweeter", "microphone": "head",
        "recording": {"rate_hz": 48000, "samples": [%s]}},
       {"channel": "right tweeter", "microphone": "head",
        "recording": {"rate_hz": 48000, "samples": [%s]}}],
     "processor": {"rate_hz": 96000, "maximum_delay_ms": 20}}
    """
        .formatted(pulse(24, 0.8), pulse(40, 0.6));
  }

  /** A damped pulse without a mean, to four decimals. */
  private static String pulse(int start, double height) {
    StringJoiner samples = new StringJoiner(",");
    for (int n = 0; n < SAMPLES; n++) {
      int since = n - start;
      double value = since < 0 ? 0 : height * Math.exp(-DECAY * since) * Math.cos(TURN * since);
      String text = String.format(Locale.ROOT, "%.4f", value);
      samples.add(Double.parseDouble(text) == 0 ? "0" : text);
    }
    return samples.toString();
  }
}
