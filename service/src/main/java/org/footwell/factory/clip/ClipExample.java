package org.footwell.factory.clip;

import java.util.Locale;
import java.util.StringJoiner;

/** The worked example of the card: a made-up output that holds its tone at 0.5 of full scale. */
final class ClipExample {

  private static final int SAMPLES = 288;
  private static final double RATE_HZ = 8000;
  private static final double TONE_HZ = 410;
  private static final double HELD_AT = 0.5;

  private ClipExample() {}

  static String json() {
    return """
    {"captures": [
       {"volume_step": 20, "recording": {"rate_hz": 8000, "samples": [%s]}},
       {"volume_step": 21, "recording": {"rate_hz": 8000, "samples": [%s]}},
       {"volume_step": 22, "recording": {"rate_hz": 8000, "samples": [%s]}}],
     "tone_hz": 410, "tone_dbfs": 0, "band_edge_hz": 2000, "full_scale_v": 2, "probe_ratio": 10,
     "terminals": "loaded", "load_ohm": 4, "measured_differentially": true}
    """
        .formatted(held(0.4), held(0.49), held(0.6));
  }

  /** A sine, held where it passes a limit, to four decimals. */
  private static String held(double amplitude) {
    StringJoiner samples = new StringJoiner(",");
    for (int n = 0; n < SAMPLES; n++) {
      double sine = amplitude * Math.sin(2 * Math.PI * TONE_HZ * n / RATE_HZ);
      double value = Math.max(-HELD_AT, Math.min(HELD_AT, sine));
      samples.add(String.format(Locale.ROOT, "%.4f", value).replaceFirst("^-(0\\.0000)$", "$1"));
    }
    return samples.toString();
  }
}
