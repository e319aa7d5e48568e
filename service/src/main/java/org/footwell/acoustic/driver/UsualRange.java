package org.footwell.acoustic.driver;

import org.footwell.acoustic.driver.sheet.Figure;
import org.footwell.acoustic.driver.sheet.Sheet;
import org.footwell.calculation.Source;

/**
 * What drivers on the market have: a lowest and a highest value for tweeters and other small ones,
 * and for cones. Common practice, no source; generous on purpose.
 */
enum UsualRange {
  SD(1.5, 25, 25, 2500),
  CMS(0.01, 3, 0.02, 4),
  MMS(0.05, 4, 1, 1000),
  BL(0.4, 12, 1, 45),
  RE(0.3, 40, 0.3, 40),
  RMS(0.01, 6, 0.1, 30),
  FS(150, 4000, 12, 600),
  VAS(0.0005, 0.5, 0.08, 800),
  QES(0.15, 8, 0.1, 4),
  QMS(0.3, 20, 0.5, 25),
  QTS(0.12, 6, 0.08, 3),
  LEVEL(75, 110, 74, 106),
  LE(0.003, 0.5, 0.02, 12),
  XMAX(0.05, 8, 0.3, 60),
  POWER(0.5, 20000, 0.5, 20000),
  DRIVER_MASS(3, 3000, 80, 60000),
  DIAMETER(9, 150, 40, 800),
  DEPTH(3, 100, 12, 450);

  static final Source SOURCE = Source.COMMON_PRACTICE;

  /** Moving mass over cone area, g/cm², of all sizes. */
  static final double LEAST_MASS_PER_AREA = 0.015;

  static final double MOST_MASS_PER_AREA = 1.5;

  /** One-way displacement over effective diameter and over mounting depth, of all sizes. */
  static final double MOST_XMAX_PER_DIAMETER = 0.15;

  static final double MOST_XMAX_PER_DEPTH = 0.25;

  /** Effective over nominal diameter; domes have surrounds as wide as their frame. */
  private static final double LEAST_DIAMETER = 0.68;

  private static final double MOST_DIAMETER = 0.97;
  private static final double LEAST_SMALL_DIAMETER = 0.4;
  private static final double MOST_SMALL_DIAMETER = 1.5;

  /** Beyond the range by this factor, a wrong unit is thought of. */
  private static final double SUSPICIOUS = 2;

  /** Beyond the range by this factor, no driver is like that. */
  private static final double ABSURD = 10;

  private static final double SMALL_CM2 = 25;

  /** Nominal size in mm up to which a driver may be a small one. */
  static final double SMALL_MM = 60;

  private static final double SMALL_HZ = 400;
  private static final UsualRange[] ALL = values();

  private final double smallLow;
  private final double smallHigh;
  private final double largeLow;
  private final double largeHigh;

  UsualRange(double smallLow, double smallHigh, double largeLow, double largeHigh) {
    this.smallLow = smallLow;
    this.smallHigh = smallHigh;
    this.largeLow = largeLow;
    this.largeHigh = largeHigh;
  }

  static UsualRange of(Figure figure) {
    return ALL[figure.index()];
  }

  /** Whether the driver is a small one: by cone area if that can be, by size and resonance otherwise. */
  static boolean isSmall(Sheet sheet, Double nominalMm) {
    double sd = sheet.of(Figure.SD_CM2);
    if (sd >= SD.smallLow && sd <= SD.largeHigh) {
      return sd < SMALL_CM2;
    }
    if (nominalMm != null && nominalMm > SMALL_MM) {
      return false;
    }
    return sheet.isKnown(Figure.FS_HZ) ? sheet.of(Figure.FS_HZ) > SMALL_HZ : nominalMm != null;
  }

  static double leastDiameter(double nominalMm, boolean small) {
    return nominalMm * (small ? LEAST_SMALL_DIAMETER : LEAST_DIAMETER);
  }

  static double mostDiameter(double nominalMm, boolean small) {
    return nominalMm * (small ? MOST_SMALL_DIAMETER : MOST_DIAMETER);
  }

  static boolean fitsNominal(double diameterMm, double nominalMm, boolean small) {
    return diameterMm >= leastDiameter(nominalMm, small)
        && diameterMm <= mostDiameter(nominalMm, small);
  }

  double low(boolean small) {
    return small ? smallLow : largeLow;
  }

  double high(boolean small) {
    return small ? smallHigh : largeHigh;
  }

  boolean holds(double value, boolean small) {
    return value >= low(small) && value <= high(small);
  }

  boolean isSuspicious(double value, boolean small) {
    return value < low(small) / SUSPICIOUS || value > high(small) * SUSPICIOUS;
  }

  boolean isAbsurd(double value, boolean small) {
    return value < low(small) / ABSURD || value > high(small) * ABSURD;
  }
}
