package org.footwell.electrical.supply;

import java.util.stream.IntStream;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.calculation.text.WireGauge;

/** American Wire Gauge: sizes by a geometric progression. */
final class Gauge {

  static final Source ASTM_B258 =
      Source.of(
          "ASTM B258, Standard nominal diameters and cross-sectional areas of AWG sizes of solid"
              + " round wires: 0.005 inch is No. 36, 0.46 inch is No. 0000, 39 equal steps between");

  /** Diameter in mm of gauge n, −3 (0000) to 40. */
  static final Formula.Of1 DIAMETER =
      Formula.of("diameter_mm", "0.127·92^((36 − n)/39)", "mm", ASTM_B258)
          .with("n", WireGauge::diameterMm);

  /** Cross-section in mm² of a round wire of d mm. */
  static final Formula.Of1 AREA =
      Formula.of("area_mm2", "π/4·d²", "mm²", Source.of("Area of a circle"))
          .with("d", WireGauge::areaMm2);

  /** Gauges of 33 CFR 183.425, Table 5, thinnest first; 0 to −3 are written 0 to 0000. */
  private static final int[] SIZES = {18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3};

  private Gauge() {}

  /** Gauges in use for supply wiring, thinnest first. */
  static IntStream sizes() {
    return IntStream.of(SIZES);
  }

  /** Cross-section in mm². */
  static double areaMm2(int gauge) {
    return AREA.at(DIAMETER.at(gauge));
  }
}
