package org.footwell.factory.clip;

import static org.footwell.factory.clip.ClipFault.TONE_ABOVE_HALF_RATE;

import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.factory.clip.ClipPointRequest.OutputLoad;
import org.footwell.recording.RecordingRules;

/** The rules that depend on what fields hold; every breach is refused, all at once. */
final class ClipRules {

  private ClipRules() {}

  /** Ends the run if anything is amiss. */
  static void require(ClipPointRequest q, Run run) {
    if (q.loadOhm() != null && q.terminals() == OutputLoad.OPEN) {
      run.refuse(CoreFault.NOT_ALLOWED)
          .at("/load_ohm")
          .given(q.loadOhm())
          .allowed(Allowed.leftOutWhere("terminals", OutputLoad.OPEN));
    }
    if (q.captures() != null) {
      captures(q, run);
    }
    run.requireNoFaults();
  }

  private static void captures(ClipPointRequest q, Run run) {
    RecordingRules rules = new RecordingRules(run);
    for (int i = 0; i < q.captures().size(); i++) {
      String at = "/captures/" + i + "/recording";
      boolean usable = rules.check(q.captures().get(i).recording(), at);
      if (usable && i == 0 && q.toneHz() != null) {
        double half = q.captures().get(i).recording().rateHz() / 2;
        if (q.toneHz() >= half) {
          run.refuse(TONE_ABOVE_HALF_RATE)
              .at("/tone_hz")
              .given(q.toneHz())
              .allowed(Allowed.below(half, "Hz"));
        }
      }
    }
  }
}
