package org.footwell.factory.sum;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.footwell.calculation.Run;
import org.footwell.factory.sum.SignalSumRequest.Output;
import org.footwell.factory.sum.SignalSumRequest.VehicleSound;
import org.footwell.factory.sum.SignalSumResult.Advice;
import org.footwell.factory.sum.SignalSumResult.Region;

/** What there is to say about a sum. */
final class SignalSumRemarks {

  /** Phases that cost so much make a hole that magnitudes alone do not show. */
  private static final double CANCELLED_DB = 6;

  private final SignalSumRequest q;
  private final Run run;

  SignalSumRemarks(SignalSumRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  void sums(SignalSumResult result) {
    if (result.sum().flatEnough()) {
      run.find(SignalSumFinding.SUM_FLAT).value(result.sum().spreadDb()).limit(q.toleranceDb());
    } else {
      run.find(SignalSumFinding.SUM_NOT_FLAT)
          .at("/outputs")
          .value(result.sum().spreadDb())
          .limit(q.toleranceDb())
          .with("from", result.sum().fromHz())
          .with("to", result.sum().toHz());
      if (!result.best().flatEnough()) {
        run.find(SignalSumFinding.SUM_NOT_FLAT_AT_BEST)
            .at("/outputs")
            .value(result.best().spreadDb())
            .limit(q.toleranceDb())
            .with("frequency", result.best().lowestHz());
      }
    }
    regions(SignalSumFinding.HOLE, result.holes());
    regions(SignalSumFinding.OVERLAP, result.overlaps());
    result.holes().stream()
        .filter(hole -> hole.phaseLossDb() > CANCELLED_DB)
        .max(Comparator.comparingDouble(Region::phaseLossDb))
        .ifPresent(
            hole ->
                run.find(SignalSumFinding.PHASES_CANCEL)
                    .at("/outputs")
                    .value(hole.phaseLossDb())
                    .limit(CANCELLED_DB)
                    .with("frequency", hole.worstHz()));
  }

  private void regions(SignalSumFinding code, List<Region> regions) {
    for (Region region : regions) {
      run.find(code)
          .at("/outputs")
          .value(region.levelDb())
          .limit(q.toleranceDb())
          .with("from", region.fromHz())
          .with("to", region.toHz())
          .with("frequency", region.worstHz());
    }
  }

  void outputs(List<KnownOutput> outputs, List<Advice> advice) {
    for (int o = 0; o < outputs.size(); o++) {
      output("/outputs/" + o, outputs.get(o), advice.get(o));
      sounds("/outputs/" + o, q.outputs().get(o), advice.get(o));
    }
  }

  private void output(String at, KnownOutput known, Advice advice) {
    String name = advice.id();
    if (known.connected() && !advice.connect()) {
      run.find(SignalSumFinding.LEAVE_OUT).at(at).own("name", name);
    }
    if (advice.turnPolarity()) {
      run.find(SignalSumFinding.TURN_POLARITY).at(at + "/polarity").own("name", name);
    }
    if (advice.delayMs() > 0) {
      run.find(SignalSumFinding.UNDO_DELAY)
          .at(at + "/delay_ms")
          .value(advice.delayMs())
          .own("name", name);
    }
    if (known.allPassHz() != null && known.connected()) {
      run.find(SignalSumFinding.ALL_PASS_HIDDEN).at(at).value(known.allPassHz()).own("name", name);
    }
  }

  private void sounds(String at, Output output, Advice advice) {
    String name = output.id();
    List<VehicleSound> carries = output.carries();
    if (carries == null) {
      run.find(SignalSumFinding.VEHICLE_SOUNDS_UNKNOWN).at(at + "/carries").own("name", name);
      return;
    }
    if (!advice.connect() && !carries.isEmpty()) {
      run.find(SignalSumFinding.VEHICLE_SOUND_NOT_IN_SUM).at(at + "/carries").own("name", name);
    }
    if (Set.copyOf(carries).contains(VehicleSound.NOISE_CANCELLING)) {
      run.find(SignalSumFinding.NOISE_CANCELLING_DISTURBED).at(at + "/carries").own("name", name);
    }
  }
}
