package org.footwell.acoustic.driver.sheet;

/**
 * The figures of a data sheet that Thiele/Small identities tie together, with the step they are
 * usually printed in (common practice, no source): the stated step or the third digit, whichever is
 * coarser.
 */
public enum Figure {
  SD("sd_cm2", 0),
  CMS("cms_mm_per_n", 0.01),
  MMS("mms_g", 0),
  BL("bl_tm", 0.1),
  RE("re_ohm", 0.1),
  RMS("rms_kg_per_s", 0.01),
  FS("fs_hz", 1),
  VAS("vas_l", 0),
  QES("qes", 0.01),
  QMS("qms", 0.01),
  QTS("qts", 0.01),
  /** In dB, unlike all others. */
  LEVEL("sensitivity", 0.5);

  public static final Figure[] ALL = values();

  private static final int FINER = 5;
  private static final double LOOSEST = 0.5;

  public final String field;
  private final String pointer;
  private final double step;

  Figure(String field, double step) {
    this.field = field;
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
    if (this == LEVEL) {
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
