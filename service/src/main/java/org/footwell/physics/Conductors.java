package org.footwell.physics;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** Resistance of flexible copper conductors. */
public final class Conductors {

  public static final Source IEC_60228 =
      Source.of(
          "IEC 60228:2004, Conductors of insulated cables, Table 3: class 5, plain annealed copper,"
              + " maximum resistance at 20 °C");
  public static final Source IEC_60028 =
      Source.of(
          "IEC 60028:1925, International standard of resistance for copper: 0.00393 per kelvin at"
              + " 20 °C");

  /** Nominal cross-sections of class 5, mm² (IEC 60228, Table 3; held against public reprints). */
  private static final double[] AREA_MM2 = {
    0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240
  };

  /** Largest resistance of each at 20 °C, ohm/km (IEC 60228, Table 3; held against public reprints). */
  private static final double[] OHM_PER_KM = {
    39.0, 26.0, 19.5, 13.3, 7.98, 4.95, 3.30, 1.91, 1.21, 0.780, 0.554, 0.386, 0.272, 0.206, 0.161,
    0.129, 0.106, 0.0801
  };

  /** Temperature coefficient of copper at 20 °C, 1/K. */
  private static final double PER_KELVIN = 0.00393;

  /**
   * Largest resistance in ohm/km at 20 °C of a cross-section in mm², 0.2 to 240. Between the sizes
   * of the table the line is straight on logarithmic axes; below 0.5 mm² its first piece goes on.
   */
  public static final Formula.Of1 CLASS_5_OHM_PER_KM =
      Formula.of(
              "conductor_ohm_per_km",
              "table, class 5; between its sizes straight in lg r over lg A",
              "ohm/km",
              IEC_60228)
          .with("A", Conductors::class5);

  /** Resistance in ohm of l metres with r ohm/km at 20 °C, at t °C, −40 to 150. */
  public static final Formula.Of3 CONDUCTOR_OHM =
      Formula.of("conductor_ohm", "l·r/1000·(1 + 0.00393·(t − 20))", "ohm", IEC_60028)
          .with("l", "r", "t", (l, r, t) -> l * r / 1000 * (1 + PER_KELVIN * (t - 20)));

  /** Resistance in ohm/km of a conductor of conductivity σ, above 0, where one of copper has r. */
  public static final Formula.Of2 OF_CONDUCTIVITY =
      Formula.of(
              "conductor_ohm_per_km",
              "r/σ",
              "ohm/km",
              Source.of("Definition of conductivity relative to annealed copper, IEC 60028"))
          .with("r", "σ", (r, sigma) -> r / sigma);

  /** Length in m of the conductors of a cable of l metres, there and back. */
  public static final Formula.Of1 LOOP_LENGTH =
      Formula.of("conductor_length_m", "2·l", "m", Source.DEFINITION).with("l", l -> 2 * l);

  private Conductors() {}

  /** The sizes of class 5 in mm², thinnest first. */
  public static DoubleStream sizesMm2() {
    return DoubleStream.of(AREA_MM2);
  }

  /** Whether a cross-section in mm² is one of the sizes of class 5, 0.5 to 240 mm². */
  public static boolean isStandard(double areaMm2) {
    return Arrays.binarySearch(AREA_MM2, areaMm2) >= 0;
  }

  private static double class5(double areaMm2) {
    int found = Arrays.binarySearch(AREA_MM2, areaMm2);
    if (found >= 0) {
      return OHM_PER_KM[found];
    }
    int above = Math.min(Math.max(-found - 1, 1), AREA_MM2.length - 1);
    int below = above - 1;
    double slope =
        Math.log(OHM_PER_KM[above] / OHM_PER_KM[below])
            / Math.log(AREA_MM2[above] / AREA_MM2[below]);
    return OHM_PER_KM[below] * Math.pow(areaMm2 / AREA_MM2[below], slope);
  }
}
