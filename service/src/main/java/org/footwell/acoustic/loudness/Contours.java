package org.footwell.acoustic.loudness;

import java.util.stream.IntStream;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** Normal equal-loudness-level contours: what level of a pure tone is as loud as one of 1 kHz. */
final class Contours {

  static final Source ISO_226 =
      Source.of(
          "ISO 226:2023, Acoustics, Normal equal-loudness-level contours, formula (1) and Table 1"
              + " (as quoted in public, not checked against a copy)");

  /** The standard's upper ends: 90 phon up to this frequency in Hz, 80 phon above. */
  static final double LOUDEST_UP_TO_HZ = 4000;

  static final double LOUDEST_ABOVE_PHON = 80;

  // Nominal frequency in Hz, exponent for loudness perception, magnitude of the transfer function
  // in dB, threshold of hearing in dB.
  private static final double[][] TABLE_1 = {
    {20, 0.635, -31.5, 78.1},
    {25, 0.602, -27.2, 68.7},
    {31.5, 0.569, -23.1, 59.5},
    {40, 0.537, -19.3, 51.1},
    {50, 0.509, -16.1, 44.0},
    {63, 0.482, -13.1, 37.5},
    {80, 0.456, -10.4, 31.5},
    {100, 0.433, -8.2, 26.5},
    {125, 0.412, -6.3, 22.1},
    {160, 0.391, -4.6, 17.9},
    {200, 0.373, -3.2, 14.4},
    {250, 0.357, -2.1, 11.4},
    {315, 0.343, -1.2, 8.6},
    {400, 0.330, -0.5, 6.2},
    {500, 0.320, 0.0, 4.4},
    {630, 0.311, 0.4, 3.0},
    {800, 0.303, 0.5, 2.2},
    {1000, 0.300, 0.0, 2.4},
    {1250, 0.295, -2.7, 3.5},
    {1600, 0.292, -4.2, 1.7},
    {2000, 0.290, -1.2, -1.3},
    {2500, 0.290, 1.4, -4.2},
    {3150, 0.289, 2.3, -6.0},
    {4000, 0.289, 1.0, -5.4},
    {5000, 0.289, -2.3, -1.5},
    {6300, 0.293, -7.2, 6.0},
    {8000, 0.303, -11.2, 12.6},
    {10000, 0.323, -10.9, 13.9},
    {12500, 0.354, -3.5, 12.3}
  };

  /** Level in dB SPL from loudness level in phon, 20 to 90, and the row of a frequency. */
  static final Formula.Of4 LEVEL =
      Formula.of(
              "level_db_spl",
              "10/α·lg((4·10⁻¹⁰)^(0.3 − α)·(10^(0.03·LN) − 10^0.072) + 10^(α·(Tf + LU)/10)) − LU",
              "dB SPL",
              ISO_226)
          .with("LN", "α", "LU", "Tf", Contours::level);

  private Contours() {}

  /** Rows of the table whose nominal frequencies lie in a range. */
  static int[] rows(double fromHz, double toHz) {
    return IntStream.range(0, TABLE_1.length)
        .filter(row -> frequencyHz(row) >= fromHz && frequencyHz(row) <= toHz)
        .toArray();
  }

  static double frequencyHz(int row) {
    return TABLE_1[row][0];
  }

  static double exponent(int row) {
    return TABLE_1[row][1];
  }

  static double transferDb(int row) {
    return TABLE_1[row][2];
  }

  static double thresholdDb(int row) {
    return TABLE_1[row][3];
  }

  private static double level(double phon, double exponent, double transfer, double threshold) {
    double above =
        Math.pow(4e-10, 0.3 - exponent) * (Math.pow(10, 0.03 * phon) - Math.pow(10, 0.072));
    double atThreshold = Math.pow(10, exponent * (threshold + transfer) / 10);
    return 10 / exponent * Math.log10(above + atThreshold) - transfer;
  }
}
