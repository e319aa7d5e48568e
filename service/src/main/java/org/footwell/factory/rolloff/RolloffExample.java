package org.footwell.factory.rolloff;

import java.util.Locale;
import java.util.StringJoiner;

/** The worked example of the card: bass below 100 Hz held back from volume step 20 on. */
final class RolloffExample {

  private static final int[] BANDS = {25, 31, 40, 50, 63, 80, 100, 125, 160, 200, 500, 1000, 2000};
  private static final int[] STEPS = {10, 15, 20, 25, 30};
  private static final double[] SHELVES_DB = {0, 0, -3, -6, -9};
  private static final double SHELF_HZ = 80;

  private RolloffExample() {}

  static String json() {
    StringJoiner levels = new StringJoiner(",\n");
    for (int s = 0; s < STEPS.length; s++) {
      for (int band : BANDS) {
        double level = -50 + STEPS[s] + LowShelf.levelDb(SHELVES_DB[s], band / SHELF_HZ);
        levels.add(
            String.format(
                Locale.ROOT,
                "{\"volume_step\": %d, \"frequency_hz\": %s, \"level_db\": %.2f}",
                STEPS[s],
                band == 31 ? "31.5" : Integer.toString(band),
                level));
      }
    }
    return """
    {"levels": [%s],
     "headroom": {"volume_step": 30, "headroom_db": 10},
     "driver": {"sd_cm2": 500, "xmax_mm": 12},
     "driver_level": {"volume_step": 20, "frequency_hz": 50, "level_db_spl": 88}}
    """
        .formatted(levels);
  }
}
