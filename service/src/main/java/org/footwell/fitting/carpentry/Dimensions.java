package org.footwell.fitting.carpentry;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.footwell.calculation.Built;
import org.footwell.fitting.carpentry.BoxPanelsResult.Size;

/**
 * The dimensions of a box of which one is not given, or of which the proportions are: what is missing
 * is found so that the box holds its volume. Lengths in mm.
 *
 * @param heightPerWidth null where dimensions are given
 * @param depthPerWidth likewise
 * @param topDepthMm of a wedge, or null
 * @param backAngleDeg of a wedge from the vertical, degrees, or null
 * @param inside whether all of it is between the inner faces
 */
@Built
record Dimensions(
    Double widthMm,
    Double heightMm,
    Double depthMm,
    Double heightPerWidth,
    Double depthPerWidth,
    Double topDepthMm,
    Double backAngleDeg,
    boolean inside,
    double boardMm,
    double frontMm) {

  static final double LONGEST_MM = 3000;

  /** Less than any volume asked for takes up between the longest of the other two. */
  private static final double LEAST_MM = 1e-6;

  private static final int SOLVER_STEPS = 200;

  /** Whether the largest box holds as much, litre. */
  boolean reaches(double grossL) {
    return tried(highest()).grossL() >= grossL;
  }

  /**
   * The box of a volume in litre that is {@linkplain #reaches reached}; where its back meets the front
   * before it is that small, one that holds something else.
   */
  Carcass holding(double grossL) {
    return tried(
        new BrentSolver(1e-13, 1e-10)
            .solve(SOLVER_STEPS, mm -> tried(mm).grossL() - grossL, LEAST_MM, highest()));
  }

  private Carcass tried(double mm) {
    return inside
        ? Carcass.fromInside(size(mm), boardMm, frontMm)
        : Carcass.fromOutside(size(mm), boardMm, frontMm);
  }

  /** The dimensions as they are given, mm in place of the one that is not. */
  private Size size(double mm) {
    boolean proportions = heightPerWidth != null;
    double width = widthMm == null ? mm : widthMm;
    double height = heightMm == null ? mm : heightMm;
    double depth = depthMm == null ? mm : depthMm;
    if (proportions) {
      height = mm * heightPerWidth;
      depth = mm * depthPerWidth;
    }
    return new Size(width, height, depth, top(height, depth));
  }

  private double top(double height, double depth) {
    if (backAngleDeg != null) {
      return depth - height * Math.tan(Math.toRadians(backAngleDeg));
    }
    return topDepthMm == null ? depth : topDepthMm;
  }

  /** The largest value to try: beyond it a box is too large, or its back reaches the front. */
  private double highest() {
    if (backAngleDeg == null || depthMm == null || heightMm != null) {
      return LONGEST_MM;
    }
    double lean = Math.tan(Math.toRadians(backAngleDeg));
    double inDepth = depthMm;
    if (!inside) {
      inDepth += boardMm * lean - Carcass.BOARDS_IN_DEPTH.at(frontMm, boardMm, lean);
    }
    // A hair before the edge itself, where no depth is left at the top.
    return Math.min(LONGEST_MM, inDepth / lean * (1 - 1e-12));
  }
}
