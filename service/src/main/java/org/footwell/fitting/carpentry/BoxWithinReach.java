package org.footwell.fitting.carpentry;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** There is a box of the dimensions that holds the volume. */
@Check.Of(
    value = {
      "volume_l",
      "driver_displacement_l",
      "bracing_l",
      "port_displacement_l",
      "board_mm",
      "front_board_mm",
      "measured",
      "width_mm",
      "height_mm",
      "depth_mm",
      "height_per_width",
      "depth_per_width",
      "top_depth_mm",
      "back_angle_deg"
    },
    says =
        "The dimension left open can be such, up to 3000 mm, that the box holds volume_l and what"
            + " takes up room in it; top_depth_mm is below the depth at the bottom.")
final class BoxWithinReach implements Check<BoxPanelsRequest> {

  @Override
  public void check(BoxPanelsRequest q, Refusing to) {
    new DimensionRules(q, to).box(BoxPanels.grossL(q, Arithmetic.SILENT));
  }
}
