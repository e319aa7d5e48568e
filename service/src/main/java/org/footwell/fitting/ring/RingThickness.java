package org.footwell.fitting.ring;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/**
 * How thick a ring must and may be, mm.
 *
 * @param lowest what the depth behind asks for, at least 0
 * @param highest what the grille allows, or null without a grille; may be negative
 * @param taken what the ring is made with
 */
record RingThickness(double lowest, Double highest, double taken) {

  /** Screws hold over this many diameters, as do those that form their thread in plastic. */
  static final double ENGAGEMENT = 2;

  static final Source SCREWS =
      Source.of(
          "Boss design for thread-forming screws in thermoplastics, as screw makers publish it:"
              + " engagement and boss of two screw diameters; for boards common practice");

  /** Thinner than this no ring is made, mm. */
  private static final double THINNEST = 1;

  /** Least thickness for the depth, mm: the driver must end before what lies behind. */
  static final Formula.Of3 LOWEST =
      Formula.of("lowest_thickness_mm", "max(0, D + c − B)", "mm", DEFINITION)
          .with("D", "c", "B", (depth, clearance, free) -> Math.max(0, depth + clearance - free));

  /** Largest thickness for the grille, mm: cone and frame must stay behind it. */
  static final Formula.Of4 HIGHEST =
      Formula.of("highest_thickness_mm", "G − h − x − c", "mm", DEFINITION)
          .with("G", "h", "x", "c", (grille, h, x, clearance) -> grille - h - x - clearance);

  /** Thickness the screws ask for, mm. */
  static final Formula.Of1 FOR_SCREWS =
      Formula.of("screw_thickness_mm", "2·d", "mm", SCREWS).with("d", d -> ENGAGEMENT * d);

  /** As thick as is wished where the grille allows it, but never thinner than must be. */
  static RingThickness near(double wished, double lowest, Double highest) {
    double allowed = highest == null ? wished : Math.min(wished, highest);
    return new RingThickness(lowest, highest, Math.max(Math.max(allowed, lowest), THINNEST));
  }
}
