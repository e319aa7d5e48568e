package org.footwell.fitting.carpentry;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.fitting.carpentry.BoxPanelsResult.Size;

/**
 * The faces of a box whose front is upright and whose back may lean: an upright trapezoid, pulled
 * across the width. Lengths in mm.
 *
 * @param inside between the inner faces
 * @param outside between the outer faces
 * @param lean tangent of the back's angle from the vertical
 */
record Carcass(Size inside, Size outside, double lean) {

  static final Source TRAPEZOID = Source.of("Area of a trapezoid and volume of a prism");

  /** Volume in litre from width, height, depth at the bottom and at the top in mm. */
  static final Formula.Of4 VOLUME =
      Formula.of("volume_l", "w·h·(d + top)/2·10⁻⁶", "l", TRAPEZOID)
          .with("w", "h", "d", "top", (w, h, d, top) -> w * h * (d + top) / 2 / 1e6);

  static final Formula.Of3 LEAN =
      Formula.of("lean", "(d − top)/h", "", TRAPEZOID)
          .with("d", "top", "h", (d, top, h) -> (d - top) / h);

  /**
   * What boards add to the depth at mid-height, mm: the front's thickness and the leaning back's,
   * measured level.
   */
  static final Formula.Of3 BOARDS_IN_DEPTH =
      Formula.of("boards_mm", "front + t·√(1 + lean²)", "mm", TRAPEZOID)
          .with("front", "t", "lean", (front, t, lean) -> front + t * Math.sqrt(1 + lean * lean));

  /** Mass in kg from outer and inner volume in litre and density in kg/m³. */
  static final Formula.Of3 MASS =
      Formula.of("board_mass_kg", "ρ·(outside − inside)/1000", "kg", Source.DEFINITION)
          .with("ρ", "outside", "inside", (rho, out, in) -> rho * (out - in) / 1000);

  /** Mass in kg of what a hole of some mm takes out of a board of some mm. */
  static final Formula.Of3 HOLE =
      Formula.of("hole_kg", "ρ·π·(d/2)²·t·10⁻⁹", "kg", Source.DEFINITION)
          .with("ρ", "d", "t", (rho, d, t) -> rho * Math.PI * d * d / 4 * t / 1e9);

  /** From inner faces: top and bottom boards are passed by the leaning back, so depths spread. */
  static Carcass fromInside(Size in, double board, double front) {
    double lean = LEAN.at(in.depthMm(), in.topDepthMm(), in.heightMm());
    double boards = BOARDS_IN_DEPTH.at(front, board, lean);
    double spread = board * lean;
    return new Carcass(
        in,
        new Size(
            in.widthMm() + 2 * board,
            in.heightMm() + 2 * board,
            in.depthMm() + boards + spread,
            in.topDepthMm() + boards - spread),
        lean);
  }

  static Carcass fromOutside(Size out, double board, double front) {
    double lean = LEAN.at(out.depthMm(), out.topDepthMm(), out.heightMm());
    double boards = BOARDS_IN_DEPTH.at(front, board, lean);
    double spread = board * lean;
    return new Carcass(
        new Size(
            out.widthMm() - 2 * board,
            out.heightMm() - 2 * board,
            out.depthMm() - boards - spread,
            out.topDepthMm() - boards + spread),
        out,
        lean);
  }

  /** Inside volume in litre, or below 0 when the boards leave no room. */
  double grossL() {
    boolean room =
        Math.min(inside.widthMm(), inside.heightMm()) > 0
            && Math.min(inside.depthMm(), inside.topDepthMm()) > 0;
    return room ? litre(inside) : -1;
  }

  double outsideL() {
    return litre(outside);
  }

  /** Secant of the back's angle: its length over its height. */
  double stretch() {
    return Math.sqrt(1 + lean * lean);
  }

  double angleDeg() {
    return Math.toDegrees(Math.atan(lean));
  }

  private static double litre(Size size) {
    return VOLUME.at(size.widthMm(), size.heightMm(), size.depthMm(), size.topDepthMm());
  }
}
