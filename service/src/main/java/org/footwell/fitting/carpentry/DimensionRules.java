package org.footwell.fitting.carpentry;

import static org.footwell.fitting.carpentry.CarpentryFault.DIMENSION_OUT_OF_REACH;
import static org.footwell.fitting.carpentry.CarpentryFault.WEDGE_NOT_A_WEDGE;

import java.util.Optional;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.carpentry.BoxPanelsRequest.Measured;
import org.footwell.fitting.carpentry.BoxPanelsResult.Size;

/** Finds the box that is asked for, and refuses dimensions of which none follows. */
final class DimensionRules {

  /** How near the volume found must be to the one asked for. */
  private static final double SAME_VOLUME = 1e-6;

  private final BoxPanelsRequest q;
  private final Refusing to;

  DimensionRules(BoxPanelsRequest q, Refusing to) {
    this.q = q;
    this.to = to;
  }

  /** The box of a volume in litre; none where it is refused, or dimensions are told to be too many. */
  Optional<Carcass> box(double grossL) {
    boolean wedge = q.topDepthMm() != null || q.backAngleDeg() != null;
    if (!TwoDimensions.decided(q) || (q.topDepthMm() != null && q.backAngleDeg() != null)) {
      return Optional.empty();
    }
    Dimensions dimensions = dimensions();
    if (!dimensions.reaches(grossL)) {
      return outOfReach(grossL, Phrase.of(PanelWords.LARGER_DIMENSIONS));
    }
    Carcass carcass = dimensions.holding(grossL);
    if (Math.abs(carcass.grossL() - grossL) > SAME_VOLUME * grossL) {
      // The back meets the front before the volume is that small.
      return outOfReach(grossL, Phrase.of(PanelWords.LESS_LEAN));
    }
    if (wedge && carcass.lean() <= 0) {
      Size size = dimensions.inside() ? carcass.inside() : carcass.outside();
      to.refuse(WEDGE_NOT_A_WEDGE)
          .at("/top_depth_mm")
          .given(q.topDepthMm())
          .allowed(Phrase.of(PanelWords.BELOW_BOTTOM_DEPTH).with("depth", size.depthMm()));
      return Optional.empty();
    }
    return Optional.of(carcass);
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

  private Optional<Carcass> outOfReach(double grossL, Phrase allowed) {
    to.refuse(DIMENSION_OUT_OF_REACH)
        .at("/" + unknown())
        .given(grossL)
        .limit(Dimensions.LONGEST_MM)
        .field("name", unknown())
        .allowed(allowed);
    return Optional.empty();
  }

  private String unknown() {
    return q.widthMm() == null ? "width_mm" : q.heightMm() == null ? "height_mm" : "depth_mm";
  }
}
