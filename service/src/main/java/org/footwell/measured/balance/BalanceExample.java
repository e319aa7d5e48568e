package org.footwell.measured.balance;

import java.util.Locale;
import java.util.StringJoiner;

/** The worked example of the card: two short made-up impulse responses. */
final class BalanceExample {

  private static final int SAMPLES = 96;

  private BalanceExample() {}

  static String json() {
    return """
    {"kind": "impulse_response",
     "channels": [{"id": "left tweeter", "from_hz": 3150, "to_hz": 16000},
                  {"id": "right tweeter", "from_hz": 3150, "to_hz": 16000}],
     "microphones": [{"id": "head"}],
     "recordings": [
       {"channel": "left tweeter", "microphone": "head",
        "recording": {"rate_hz": 48000, "samples": [%s]}},
       {"channel": "right tweeter", "microphone": "head",
        "recording": {"rate_hz": 48000, "samples": [%s]}}],
     "pairs": [{"left": "left tweeter", "right": "right tweeter"}],
     "target": {"tilt": {"slope_db_per_octave": -1}},
     "gate": {"before_ms": 0.4, "after_ms": 1.5},
     "from_hz": 2000}
    """
        .formatted(pulse(24, 0.8), pulse(40, 0.5));
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
