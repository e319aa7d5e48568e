package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * American wire gauge. No. 36 is 0.005 inch and No. 0000 is 0.46 inch in diameter, with 39 equal ratios between them
 * (ASTM B258); 0 to −3 stand for 0 to 0000.
 */
public final class WireGauge {

  private static final int THICKEST = -3;
  private static final int THINNEST = 40;

  /** So near must an area be, in parts of it, to be called a gauge: catalogues round to 8.37 mm². */
  private static final double NEAR = 0.005;

  private static final Pattern WRITTEN =
      Pattern.compile(
          "(?:(?<zeros>0{1,4})|(?<count>[1-4])/0|(?<number>[1-9]|[1-3]\\d|40)) ?(?i:AWG)");

  private WireGauge() {}

  /** Diameter in mm of gauge n, −3 to 40. */
  public static double diameterMm(double n) {
    return 0.127 * Math.pow(92, (36 - n) / 39);
  }

  /** Cross-section in mm² of a round wire of d mm. */
  public static double areaMm2(double diameterMm) {
    return Math.PI / 4 * diameterMm * diameterMm;
  }

  /** How a gauge is written: 4, 0, 00. */
  public static String name(int gauge) {
    return gauge > 0 ? Integer.toString(gauge) : "0".repeat(1 - gauge);
  }

  /** Cross-section in square metres of a gauge that is written as 4 AWG, 1/0 AWG or 00 AWG; else null. */
  static BigDecimal squareMetres(String text) {
    Matcher written = WRITTEN.matcher(text);
    if (!written.matches()) {
      return null;
    }
    int gauge =
        written.group("number") != null
            ? Integer.parseInt(written.group("number"))
            : 1
                - (written.group("count") != null
                    ? Integer.parseInt(written.group("count"))
                    : written.group("zeros").length());
    return Unit.MM2.toMetres(BigDecimal.valueOf(areaMm2(diameterMm(gauge))));
  }

  /** All gauges as they are written without a blank, 0000 also as 4/0, with their cross-section in square metres. */
  static Map<String, BigDecimal> written() {
    Map<String, BigDecimal> areas = new TreeMap<>();
    for (int gauge = THICKEST; gauge <= THINNEST; gauge++) {
      String written = name(gauge) + "AWG";
      BigDecimal area = squareMetres(written);
      areas.put(written, area);
      if (gauge <= 0) {
        areas.put(1 - gauge + "/0AWG", area);
      }
    }
    return areas;
  }

  /** The gauge that has this cross-section, as near as catalogues state it. */
  public static Optional<String> nameOf(double areaMm2) {
    return IntStream.rangeClosed(THICKEST, THINNEST)
        .filter(gauge -> Math.abs(areaMm2(diameterMm(gauge)) / areaMm2 - 1) < NEAR)
        .mapToObj(WireGauge::name)
        .findFirst();
  }
}
