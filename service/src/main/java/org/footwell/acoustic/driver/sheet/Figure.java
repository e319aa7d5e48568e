package org.footwell.acoustic.driver.sheet;

import java.util.Locale;

/**
 * The figures of a data sheet that Thiele/Small identities tie together, with the step they are
 * usually printed in (common practice, no source): the stated step or the third digit, whichever is
 * coarser.
 */
public enum Figure {
  SD_CM2(0),
  CMS_MM_PER_N(0.01),
  MMS_G(0),
  BL_TM(0.1),
  RE_OHM(0.1),
  RMS_KG_PER_S(0.01),
  FS_HZ(1),
  VAS_L(0),
  QES(0.01),
  QMS(0.01),
  QTS(0.01),
  /** In dB, unlike all others. */
  SENSITIVITY(0.5);

  public static final Figure[] ALL = values();

  private static final int FINER = 5;
  private static final double LOOSEST = 0.5;

  /** Its name in requests and answers. */
  public final String field;

  private final String pointer;
  private final double step;

  Figure(double step) {
    this.field = name().toLowerCase(Locale.ROOT);
    this.pointer = "/" + field;
    this.step = step;
  }

  /** Its place in the arrays. */
  @SuppressWarnings("EnumOrdinal") // nothing outlives the run
  public int index() {
    return ordinal();
  }

  public int bit() {
    return 1 << index();
  }

  public String pointer() {
    return pointer;
  }

  public static int bits(Figure... figures) {
    int bits = 0;
    for (Figure figure : figures) {
      bits |= figure.bit();
    }
    return bits;
  }

  /** Largest relative error that printing causes; for the level in dB. */
  public double rounding(double value) {
    if (this == SENSITIVITY) {
      return printedStep(value, step) / 2;
    }
    double printed = printedStep(value, Math.max(step, thirdDigit(value)));
    return Math.min(LOOSEST, printed / 2 / value);
  }

  /** The usual step, or a finer one where the value shows more decimals than that. */
  private static double printedStep(double value, double usual) {
    double printed = usual;
    for (int finer = 0; finer < FINER && !isMultiple(value, printed); finer++) {
      printed /= 10;
    }
    return printed;
  }

  private static boolean isMultiple(double value, double step) {
    double count = value / step;
    return Math.abs(count - Math.rint(count)) < 1e-6;
  }

  private static double thirdDigit(double value) {
    double digit = 0.01;
    double rest = value;
    while (rest >= 10) {
      rest /= 10;
      digit *= 10;
    }
    while (rest < 1) {
      rest *= 10;
      digit /= 10;
    }
    return digit;
  }
}
