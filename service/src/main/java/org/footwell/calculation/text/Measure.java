package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Units that names of quantities end in, and how a figure of each is rounded for people: to three
 * significant digits, but no digit before the point is lost, and with no fewer and no more decimals than the
 * unit has.
 */
public enum Measure {
  DB_SPL("dB SPL", 1, 1),
  DBA("dBA", 1, 1),
  DBC("dBC", 1, 1),
  DBFS("dBFS", 1, 1),
  DB("dB", 1, 1),
  HZ("Hz", 0, 1),
  W("W", 0, 2),
  V("V", 0, 2),
  A("A", 0, 2),
  MA("mA", 0, 1),
  AH("Ah", 0, 1),
  OHM("Ω", 0, 4),
  MS("ms", 2, 2),
  H("h", 0, 2),
  MM("mm", 0, 2),
  CM("cm", 0, 1),
  M("m", 0, 2),
  MM2("mm²", 0, 2),
  CM2("cm²", 0, 1),
  CM3("cm³", 0, 1),
  M3("m³", 0, 2),
  L("l", 0, 2),
  G("g", 0, 1),
  KG("kg", 0, 2),
  UF("µF", 0, 2),
  MH("mH", 0, 3),
  C("°C", 0, 1),
  PERCENT("%", 0, 1),
  DEG("°", 0, 1),
  OCTAVES("octaves", 1, 1),
  IN("in", 0, 3),
  FT("ft", 0, 2),
  IN2("in²", 0, 2),
  IN3("in³", 0, 1),
  FT3("ft³", 0, 3);

  private static final int SIGNIFICANT = 3;

  /** What figures are shown in to those who want it; no quantity is called after one. */
  private static final Set<Measure> SHOWN_ONLY = EnumSet.of(IN, FT, IN2, IN3, FT3);

  /** The longest ending first: a level in dB SPL is not one in SPL. */
  private static final List<Measure> BY_ENDING =
      Arrays.stream(values())
          .filter(measure -> !SHOWN_ONLY.contains(measure))
          .sorted(Comparator.comparingInt(measure -> -measure.ending().length()))
          .toList();

  /** Before the unit of a divisor: a price per metre is no length. */
  private static final String PER = "_per";

  /** Places in lists at the end of a path. */
  private static final Pattern INDEXES = Pattern.compile("([/.]\\d+)+$");

  private final String symbol;
  private final int fewest;
  private final int most;

  Measure(String symbol, int fewest, int most) {
    this.symbol = symbol;
    this.fewest = fewest;
    this.most = most;
  }

  /** The unit that the name of a quantity ends in, if it is one of these. */
  public static Optional<Measure> ofName(String name) {
    return BY_ENDING.stream()
        .filter(measure -> name.endsWith(measure.ending()))
        .findFirst()
        .filter(measure -> !name.endsWith(PER + measure.ending()));
  }

  /** The same of the end of a path, dotted or as a JSON Pointer; what a list of numbers is in, its entries are. */
  public static Optional<Measure> ofPath(String path) {
    return ofName(INDEXES.matcher(path).replaceFirst(""));
  }

  /** Those that quantities have. */
  static List<Measure> ofQuantities() {
    return BY_ENDING;
  }

  /** What the name of a quantity in it ends in. */
  public String ending() {
    return "_" + name().toLowerCase(Locale.ROOT);
  }

  /** As it stands behind a figure. */
  public String symbol() {
    return symbol;
  }

  /** A figure as people are shown it; half of the last digit is rounded away from zero. */
  public BigDecimal rounded(double value) {
    BigDecimal exact = BigDecimal.valueOf(value);
    int before = exact.signum() == 0 ? 1 : exact.precision() - exact.scale();
    int decimals = Math.max(fewest, Math.min(most, SIGNIFICANT - before));
    BigDecimal rounded = exact.setScale(decimals, RoundingMode.HALF_UP);
    BigDecimal bare = rounded.stripTrailingZeros();
    return bare.scale() < fewest ? rounded.setScale(fewest, RoundingMode.UNNECESSARY) : bare;
  }
}
