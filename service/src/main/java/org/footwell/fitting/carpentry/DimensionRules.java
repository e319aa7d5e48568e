package org.footwell.fitting.carpentry;

import static org.footwell.fitting.carpentry.CarpentryFault.DIMENSIONS_UNDECIDED;
import static org.footwell.fitting.carpentry.CarpentryFault.DIMENSION_OUT_OF_REACH;
import static org.footwell.fitting.carpentry.CarpentryFault.WEDGE_NOT_A_WEDGE;

import java.util.stream.Stream;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.carpentry.BoxPanelsRequest.Measured;
import org.footwell.fitting.carpentry.BoxPanelsResult.Size;

/** Finds the box that is asked for, and refuses dimensions of which none follows. */
final class DimensionRules {

  /** How near the volume found must be to the one asked for. */
  private static final double SAME_VOLUME = 1e-6;

  private final BoxPanelsRequest q;
  private final Run run;

  DimensionRules(BoxPanelsRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  /** The box of a volume in litre. */
  Carcass box(double grossL) {
    refuseUndecided();
    Dimensions dimensions = dimensions();
    if (!dimensions.reaches(grossL)) {
      throw outOfReach(grossL, Phrase.of(PanelWords.LARGER_DIMENSIONS));
    }
    Carcass carcass = dimensions.holding(grossL);
    if (Math.abs(carcass.grossL() - grossL) > SAME_VOLUME * grossL) {
      // The back meets the front before the volume is that small.
      throw outOfReach(grossL, Phrase.of(PanelWords.LESS_LEAN));
    }
    boolean wedge = q.topDepthMm() != null || q.backAngleDeg() != null;
    if (wedge && carcass.lean() <= 0) {
      Size size = dimensions.inside() ? carcass.inside() : carcass.outside();
      run.refuse(WEDGE_NOT_A_WEDGE)
          .at("/top_depth_mm")
          .given(q.topDepthMm())
          .allowed(Phrase.of(PanelWords.BELOW_BOTTOM_DEPTH).with("depth", size.depthMm()));
      throw run.refused();
    }
    return carcass;
  }

  private Dimensions dimensions() {
    return DimensionsBuilder.builder()
        .widthMm(q.widthMm())
        .heightMm(q.heightMm())
        .depthMm(q.depthMm())
        .heightPerWidth(q.heightPerWidth())
        .depthPerWidth(q.depthPerWidth())
        .topDepthMm(q.topDepthMm())
        .backAngleDeg(q.backAngleDeg())
        .inside(q.measured() == Measured.INSIDE)
        .boardMm(q.boardMm())
        .frontMm(q.front())
        .build();
  }

  private Refused outOfReach(double grossL, Phrase allowed) {
    run.refuse(DIMENSION_OUT_OF_REACH)
        .at("/" + unknown())
        .given(grossL)
        .limit(Dimensions.LONGEST_MM)
        .field("name", unknown())
        .allowed(allowed);
    return run.refused();
  }

  private void refuseUndecided() {
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

  private String unknown() {
    return q.widthMm() == null ? "width_mm" : q.heightMm() == null ? "height_mm" : "depth_mm";
  }
}
