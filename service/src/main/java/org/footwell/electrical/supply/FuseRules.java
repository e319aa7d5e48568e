package org.footwell.electrical.supply;

import static org.footwell.electrical.supply.CableFinding.AMPLIFIER_FUSE_LARGER;
import static org.footwell.electrical.supply.CableFinding.AMPLIFIER_FUSE_SMALLER;
import static org.footwell.electrical.supply.CableFinding.FULL_SINE_ABOVE_FUSE;
import static org.footwell.electrical.supply.CableFinding.FULL_SINE_OPENS_FUSE;

import org.footwell.calculation.Remark;
import org.footwell.calculation.Run;
import org.footwell.electrical.supply.Fuse.OpeningTime;
import org.footwell.electrical.supply.SupplyCableResult.FuseSeries;
import org.footwell.electrical.supply.SupplyCableResult.SizedCable;

/** What there is to say about the fuse advised for a cable, at the loudest it is played. */
final class FuseRules {

  private FuseRules() {}

  static void find(Leg leg, SizedCable cable, Run run) {
    if (cable == null || cable.fuseA() == null) {
      return;
    }
    fullSine(leg, cable, run);
    ownFuses(leg, cable, run);
  }

  private static void fullSine(Leg leg, SizedCable cable, Run run) {
    Double sine = leg.loudest().sineA();
    double carries = cable.fuseA() * leg.fusing().heatFactor();
    if (sine == null || sine <= Fuse.STAYS_CLOSED * carries) {
      return;
    }
    OpeningTime time =
        cable.fuseSeries() == FuseSeries.BLADE ? OpeningTime.at(sine / carries) : null;
    if (time == null) {
      run.find(FULL_SINE_ABOVE_FUSE)
          .at(leg.pointer() + "/full_sine_a")
          .value(sine)
          .limit(Fuse.STAYS_CLOSED * carries)
          .with("fuse", cable.fuseA());
    } else {
      run.find(FULL_SINE_OPENS_FUSE)
          .at(leg.pointer() + "/full_sine_a")
          .value(sine)
          .limit(Fuse.STAYS_CLOSED * carries)
          .with("fuse", cable.fuseA())
          .with("soonest", time.soonestS())
          .with("latest", time.latestS());
    }
  }

  private static void ownFuses(Leg leg, SizedCable cable, Run run) {
    Double own = leg.loudest().amplifierFuseA();
    if (own == null || own.equals(cable.fuseA())) {
      return;
    }
    boolean larger = own > cable.fuseA();
    Remark remark =
        run.find(larger ? AMPLIFIER_FUSE_LARGER : AMPLIFIER_FUSE_SMALLER)
            .at(leg.pointer() + "/amplifier_fuse_a")
            .value(own)
            .limit(cable.fuseA());
    if (larger) {
      remark.with("largest", cable.fuseLargestA());
    }
  }
}
