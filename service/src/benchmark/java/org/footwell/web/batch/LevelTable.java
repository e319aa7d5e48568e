package org.footwell.web.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/** A table of made-up rows for sound-level, seeded: every one another system in another car. */
final class LevelTable {

  private static final int[] COUNTS = {1, 2, 4};
  private static final int[] OHMS = {2, 4, 8};

  private LevelTable() {}

  static String of(int rows) {
    Random random = new Random(1);
    StringBuilder table =
        new StringBuilder(
            "driver.sensitivity.level_db_spl,driver.sensitivity.basis,driver.rated_ohm,power_w,distance_m,driver_count,"
                + "drive,addition,crest_factor_db,target_level_db_spl,road_noise_dba,a_weighting_db\n");
    for (int i = 0; i < rows; i++) {
      table.append(
          String.format(
              Locale.ROOT,
              "%.1f,%s,%d,%d,%.2f,%d,%s,%s,%d,%d,%d,%.1f%n",
              82 + 14 * random.nextDouble(),
              random.nextBoolean() ? "one_watt" : "two_point_eight_three_volt",
              OHMS[random.nextInt(OHMS.length)],
              5 + random.nextInt(296),
              0.5 + random.nextDouble(),
              COUNTS[random.nextInt(COUNTS.length)],
              random.nextBoolean() ? "each" : "shared",
              random.nextBoolean() ? "coherent" : "incoherent",
              6 + random.nextInt(10),
              90 + random.nextInt(26),
              60 + random.nextInt(15),
              -8 * random.nextDouble()));
    }
    return table.toString();
  }

  /** Arguments: file to write, how many rows. */
  public static void main(String[] arguments) throws IOException {
    Files.writeString(Path.of(arguments[0]), of(Integer.parseInt(arguments[1])));
  }
}
