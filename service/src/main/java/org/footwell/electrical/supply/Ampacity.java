package org.footwell.electrical.supply;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** What current an insulated conductor may carry for long. */
final class Ampacity {

  static final Source CFR_33_183_425 =
      Source.of(
          "US 33 CFR 183.425, Conductors: General, Table 5: allowable amperage of conductors, and"
              + " its note 1 for engine spaces. Law for boats, for stranded copper");

  /** Temperature ratings of the insulation, °C: the columns of Table 5. */
  private static final double[] RATING_C = {60, 75, 80, 90, 105, 125, 200};

  /**
   * Note 1 of Table 5, for each rating (typed from memory; 0.58, 0.75, 0.82, 0.85 and 0.89 agree
   * with other public tables for 50 °C around). 0.78 was not seen elsewhere; the law of heat,
   * √((t − 50)/(t − 30)), gives 0.775. At 200 °C the 0.94 of the Canadian Electrical Code, Table 5A,
   * stands, 0.939 by that law, until the note itself is read.
   */
  private static final double[] ENGINE_SPACE = {0.58, 0.75, 0.78, 0.82, 0.85, 0.89, 0.94};

  /** Table 5, A: one row for each of {@link Gauge#sizes()}, one column for each rating. */
  private static final double[][] TABLE_5 = {
    {10, 10, 15, 20, 20, 25, 25},
    {15, 15, 20, 25, 25, 30, 35},
    {20, 20, 25, 30, 35, 40, 45},
    {25, 25, 35, 40, 45, 50, 55},
    {40, 40, 50, 55, 60, 70, 70},
    {55, 65, 70, 70, 80, 90, 100},
    {80, 95, 100, 100, 120, 125, 135},
    {105, 125, 130, 135, 160, 170, 180},
    {120, 145, 150, 155, 180, 195, 210},
    {140, 170, 175, 180, 210, 225, 240},
    {165, 195, 210, 210, 245, 265, 280},
    {195, 230, 245, 245, 285, 305, 325},
    {225, 265, 285, 285, 330, 355, 370},
    {260, 310, 330, 330, 385, 410, 430},
    {300, 360, 385, 385, 445, 475, 510},
  };

  private static final double[] TABLE_AREA_MM2 =
      Gauge.sizes().mapToDouble(Gauge::areaMm2).toArray();

  /** People write 21.1 or 33.6 mm² for a gauge: this much below it still is that gauge. */
  private static final double ROUNDING = 0.01;

  /** Thinnest conductor that may be installed by itself, mm²: No. 16, 33 CFR 183.425(e). */
  static final double SMALLEST_MM2 = 1.3;

  /** Thickest conductor of the table, mm²: No. 0000. */
  static final double LARGEST_MM2 = TABLE_AREA_MM2[TABLE_AREA_MM2.length - 1];

  /**
   * Current in A of the thickest gauge of the table not above A mm², 1.3 or more, and the highest
   * column not above the insulation's t °C, 60 to 200: always a printed value, on the safe side.
   */
  static final Formula.Of2 TABLE =
      Formula.of(
              "table_ampacity_a",
              "Table 5: thickest gauge not above A, highest column not above t",
              "A",
              CFR_33_183_425)
          .with("A", "t", (area, t) -> TABLE_5[row(area)][column(t)]);

  /** Factor in an engine space, taken as 50 °C, for insulation rated t °C, 60 to 200. */
  static final Formula.Of1 ENGINE_SPACE_FACTOR =
      Formula.of("engine_space_factor", "Table 5, note 1", "", CFR_33_183_425)
          .with("t", t -> ENGINE_SPACE[column(t)]);

  /**
   * Current in A that warms a conductor of conductivity σ relative to copper as I amperes warm
   * copper, with the factor k of its surroundings.
   */
  static final Formula.Of3 CORRECTED =
      Formula.of(
              "ampacity_a",
              "I·k·√σ",
              "A",
              Source.of("33 CFR 183.425 for k; Joule's law for σ: the same heat per metre"))
          .with("I", "k", "σ", (i, k, sigma) -> i * k * Math.sqrt(sigma));

  private Ampacity() {}

  private static int row(double areaMm2) {
    int row = TABLE_AREA_MM2.length - 1;
    while (row > 0 && TABLE_AREA_MM2[row] * (1 - ROUNDING) > areaMm2) {
      row--;
    }
    return row;
  }

  private static int column(double ratingC) {
    int column = RATING_C.length - 1;
    while (column > 0 && RATING_C[column] > ratingC) {
      column--;
    }
    return column;
  }
}
