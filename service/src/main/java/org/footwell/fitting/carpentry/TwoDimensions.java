package org.footwell.fitting.carpentry;

import java.util.Objects;
import java.util.stream.Stream;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Phrase;

/** With its volume a box is determined. */
@Check.Of(
    value = {"width_mm", "height_mm", "depth_mm", "height_per_width", "depth_per_width"},
    says = "Two of width_mm, height_mm and depth_mm, or none of them with height_per_width.")
final class TwoDimensions implements Check<BoxPanelsRequest> {

  @Override
  public void check(BoxPanelsRequest q, Refusing to) {
    if (!decided(q)) {
      boolean proportions = q.heightPerWidth() != null;
      to.refuse(CarpentryFault.DIMENSIONS_UNDECIDED)
          .at("")
          .given(
              Phrase.of(proportions ? PanelWords.GIVEN_AND_PROPORTIONS : PanelWords.GIVEN)
                  .with("count", given(q)))
          .allowed(Phrase.of(PanelWords.TWO_DIMENSIONS));
    }
  }

  static boolean decided(BoxPanelsRequest q) {
    return given(q) == (q.heightPerWidth() == null ? 2 : 0);
  }

  private static long given(BoxPanelsRequest q) {
    return Stream.of(q.widthMm(), q.heightMm(), q.depthMm()).filter(Objects::nonNull).count();
  }
}
