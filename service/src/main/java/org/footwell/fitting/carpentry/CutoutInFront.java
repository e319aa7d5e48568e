package org.footwell.fitting.carpentry;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.fitting.carpentry.BoxPanelsResult.Size;

/** A driver goes into the front of its box; that there is no box is told elsewhere. */
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
      "back_angle_deg",
      "driver_cutout_mm"
    },
    says = "driver_cutout_mm is below the width and the height inside.")
final class CutoutInFront implements Check<BoxPanelsRequest> {

  @Override
  public void check(BoxPanelsRequest q, Refusing to) {
    if (q.driverCutoutMm() != null) {
      new DimensionRules(q, Refusing.unheard())
          .box(BoxPanels.grossL(q, Arithmetic.SILENT))
          .ifPresent(box -> check(q.driverCutoutMm(), box.inside(), to));
    }
  }

  private static void check(double cutoutMm, Size inside, Refusing to) {
    double room = Math.min(inside.widthMm(), inside.heightMm());
    if (cutoutMm >= room) {
      to.refuse(CarpentryFault.CUTOUT_TOO_LARGE)
          .at("/driver_cutout_mm")
          .given(cutoutMm)
          .allowed(Allowed.below(Math.floor(10 * room) / 10, "mm"));
    }
  }
}
