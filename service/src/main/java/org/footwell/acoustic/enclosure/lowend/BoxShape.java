package org.footwell.acoustic.enclosure.lowend;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** Lengths, section and volume of the inside of a box. */
public final class BoxShape {

  /** The side in m of a cube of some litre. */
  static final Formula.Of1 CUBE_SIDE =
      Formula.of("side_m", "∛(V/1000)", "m", Source.DEFINITION)
          .with("V", litre -> Math.cbrt(litre / 1000));

  /** What a cube of some mm holds, litre. */
  static final Formula.Of1 CUBE_VOLUME =
      Formula.of("most_l", "(L/100)³", "l", Source.DEFINITION).with("L", mm -> mm * mm * mm / 1e6);

  /** Mean section in cm² of a box of some litre and some mm of length. */
  static final Formula.Of2 SECTION =
      Formula.of("section_cm2", "10⁴·V/L", "cm²", Source.DEFINITION)
          .with("V", "L", (litre, mm) -> 1e4 * litre / mm);

  private BoxShape() {}

  /** The longest inside dimension in m: the given one in mm, or that of a cube. */
  public static double longestM(Double givenMm, double volumeL, Arithmetic steps) {
    return givenMm == null ? steps.apply(CUBE_SIDE, volumeL) : givenMm / 1000;
  }
}
