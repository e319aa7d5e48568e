package org.footwell.parts.plan;

import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.parts.Seat;

/** A seat of a plan has a place; of one ear alone it is told that the other is needed. */
@Check.Of(
    value = {"position", "left_ear", "right_ear"},
    says = "position, or left_ear and right_ear, are required here.")
final class SeatSomewhere implements Check<Seat> {

  @Override
  public void check(Seat seat, Refusing to) {
    if (seat.position() == null && seat.leftEar() == null && seat.rightEar() == null) {
      to.refuse(CoreFault.REQUIRED).at("/position");
    }
  }
}
