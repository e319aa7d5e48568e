package org.footwell.fitting.carpentry;

import static org.footwell.fitting.carpentry.CarpentryFault.DIMENSIONS_UNDECIDED;
import static org.footwell.fitting.carpentry.CarpentryFault.DIMENSION_OUT_OF_REACH;
import static org.footwell.fitting.carpentry.CarpentryFault.WEDGE_NOT_A_WEDGE;

import java.util.stream.Stream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.carpentry.BoxPanelsRequest.Measured;
import org.footwell.fitting.carpentry.BoxPanelsResult.Size;

/** Finds the dimension that is not given, so that the box holds its volume. */
final class Dimensions {

  private static final double LONGEST_MM = 3000;

  /** Less than any volume asked for takes up between the longest of the other two. */
  private static final double LEAST_MM = 1e-6;

  private static final int SOLVER_STEPS = 200;

  /** How near the volume found must be to the one asked for. */
  private static final double SAME_VOLUME = 1e-6;

  private final BoxPanelsRequest q;

  Dimensions(BoxPanelsRequest q) {
    this.q = q;
  }

  /** The box of a volume in litre. */
  Carcass solve(double grossL, Run run) {
    refuseUndecided(run);
    double most = highest();
    if (!(tried(most).grossL() >= grossL)) {
      throw outOfReach(grossL, Phrase.of(PanelWords.LARGER_DIMENSIONS), run);
    }
    double found =
        new BrentSolver(1e-13, 1e-10)
            .solve(SOLVER_STEPS, mm -> tried(mm).grossL() - grossL, LEAST_MM, most);
    Carcass carcass = tried(found);
    if (Math.abs(carcass.grossL() - grossL) > SAME_VOLUME * grossL) {
      // The back meets the front before the volume is that small.
      throw outOfReach(grossL, Phrase.of(PanelWords.LESS_LEAN), run);
    }
    if (isWedge() && carcass.lean() <= 0) {
      run.refuse(WEDGE_NOT_A_WEDGE)
          .at("/top_depth_mm")
          .given(q.topDepthMm())
          .allowed(Phrase.of(PanelWords.BELOW_BOTTOM_DEPTH).with("depth", size(found).depthMm()));
      throw run.refused();
    }
    return carcass;
  }

  private Refused outOfReach(double grossL, Phrase allowed, Run run) {
    run.refuse(DIMENSION_OUT_OF_REACH)
        .at("/" + unknown())
        .given(grossL)
        .limit(LONGEST_MM)
        .field("name", unknown())
        .allowed(allowed);
    return run.refused();
  }

  private void refuseUndecided(Run run) {
    long dimensions =
        Stream.of(present(q.widthMm()), present(q.heightMm()), present(q.depthMm()))
            .filter(given -> given)
            .count();
    boolean proportions = q.heightPerWidth() != null;
    if (dimensions != (proportions ? 0 : 2)) {
      run.refuse(DIMENSIONS_UNDECIDED)
          .at("")
          .given(
              Phrase.of(proportions ? PanelWords.GIVEN_AND_PROPORTIONS : PanelWords.GIVEN)
                  .with("count", dimensions))
          .allowed(Phrase.of(PanelWords.TWO_DIMENSIONS));
      throw run.refused();
    }
  }

  private static boolean present(Double dimension) {
    return dimension != null;
  }

  private boolean isWedge() {
    return q.topDepthMm() != null || q.backAngleDeg() != null;
  }

  private String unknown() {
    return q.widthMm() == null ? "width_mm" : q.heightMm() == null ? "height_mm" : "depth_mm";
  }

  private Carcass tried(double mm) {
    Size size = size(mm);
    return q.measured() == Measured.INSIDE
        ? Carcass.fromInside(size, q.boardMm(), q.front())
        : Carcass.fromOutside(size, q.boardMm(), q.front());
  }

  /** The dimensions as they are given, mm in place of the one that is not. */
  private Size size(double mm) {
    boolean proportions = q.heightPerWidth() != null;
    double width = q.widthMm() == null ? mm : q.widthMm();
    double height = q.heightMm() == null ? mm : q.heightMm();
    double depth = q.depthMm() == null ? mm : q.depthMm();
    if (proportions) {
      height = mm * q.heightPerWidth();
      depth = mm * q.depthPerWidth();
    }
    return new Size(width, height, depth, top(height, depth));
  }

  private double top(double height, double depth) {
    if (q.backAngleDeg() != null) {
      return depth - height * Math.tan(Math.toRadians(q.backAngleDeg()));
    }
    return q.topDepthMm() == null ? depth : q.topDepthMm();
  }

  /** The largest value to try: beyond it a box is too large, or its back reaches the front. */
  private double highest() {
    if (q.backAngleDeg() == null || q.depthMm() == null || q.heightMm() != null) {
      return LONGEST_MM;
    }
    double lean = Math.tan(Math.toRadians(q.backAngleDeg()));
    double inDepth = q.depthMm();
    if (q.measured() == Measured.OUTSIDE) {
      inDepth += q.boardMm() * lean - Carcass.BOARDS_IN_DEPTH.at(q.front(), q.boardMm(), lean);
    }
    // A hair before the edge itself, where no depth is left at the top.
    return Math.min(LONGEST_MM, inDepth / lean * (1 - 1e-12));
  }
}
