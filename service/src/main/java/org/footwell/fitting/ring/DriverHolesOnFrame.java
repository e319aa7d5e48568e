package org.footwell.fitting.ring;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.Remark;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.ring.AdapterRingRequest.FittedDriver;
import org.footwell.fitting.ring.MountingHoles.HolePosition;
import org.footwell.fitting.ring.drawing.Oval;

/**
 * Screw holes of a driver are in its frame, each for itself. That is a circle or an ellipse: one with
 * ears or corners is taken as that around them.
 */
@Check.Of(
    value = {
      "driver.frame",
      "driver.cut_out",
      "driver.holes",
      "ring.material",
      "ring.pilot_mm",
      "ring.screw_mm"
    },
    says =
        "The centres of driver.holes are inside driver.frame, outside driver.cut_out and more than"
            + " ring.pilot_mm apart.")
final class DriverHolesOnFrame implements Check<AdapterRingRequest> {

  private static final String AT = "/driver/holes";

  @Override
  public void check(AdapterRingRequest q, Refusing to) {
    FittedDriver driver = q.driver();
    if (!driver.holes().clear()) {
      return;
    }
    if (driver.frame().clear() && driver.cutOut().clear()) {
      onFrame(driver.holes(), driver.frame().oval(), driver.cutOut().oval(), to);
    }
    RingSizes.apart(AT, driver.holes(), q.ring().pilotMm(), to);
  }

  private static void onFrame(MountingHoles holes, Oval frame, Oval cutOut, Refusing to) {
    List<HolePosition> centres = holes.centres();
    for (int i = 0; i < centres.size(); i++) {
      HolePosition centre = centres.get(i);
      double inCutOut = cutOut.inside(centre.xMm(), centre.yMm());
      double inFrame = frame.inside(centre.xMm(), centre.yMm());
      if (inCutOut < 0 && inFrame > 0) {
        continue;
      }
      Remark remark =
          inCutOut >= 0
              ? to.refuse(RingFault.HOLE_IN_DRIVER_CUT_OUT)
                  .with("by", inCutOut)
                  .own("cutOut", RingSizes.spoken(cutOut))
                  .allowed(Phrase.of(RingWords.ON_THE_FRAME))
              : to.refuse(RingFault.HOLE_OUTSIDE_FRAME)
                  .with("by", -inFrame)
                  .own("frame", RingSizes.spoken(frame))
                  .allowed(RingSizes.moreThan(frame.scaled(farthest(centres, frame))));
      remark.at(AT + holes.pointer(i)).given(RingSizes.spoken(centre));
      if (holes.boltCircle() != null) {
        return;
      }
    }
  }

  /** How much larger a frame of the same shape would be whose edge runs through the farthest hole. */
  private static double farthest(List<HolePosition> centres, Oval frame) {
    return centres.stream()
        .mapToDouble(centre -> frame.timesThrough(centre.xMm(), centre.yMm()))
        .max()
        .orElseThrow();
  }
}
