package org.footwell.factory.rolloff;

import static org.footwell.factory.rolloff.RolloffFault.STEP_NOT_MEASURED;
import static org.footwell.factory.rolloff.RolloffFault.TOO_FEW_STEPS;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/** What is said of a volume step is said of one that was measured, and there is another. */
@Check.Of(
    value = {
      "captures.*.volume_step",
      "levels.*.volume_step",
      "reference_step",
      "headroom.volume_step",
      "driver_level.volume_step"
    },
    says =
        "Captures or levels are of two volume steps or more; reference_step, headroom.volume_step and"
            + " driver_level.volume_step are among them.")
final class StepsMeasured implements Check<BassRolloffRequest> {

  @Override
  public void check(BassRolloffRequest q, Refusing to) {
    if ((q.captures() == null) == (q.levels() == null)) {
      return; // told by the rule
    }
    List<Integer> steps = BandTableReader.steps(q);
    if (steps.size() < 2) {
      to.refuse(TOO_FEW_STEPS).at(BandTableReader.list(q)).given(steps.size());
    }
    step("/reference_step", q.referenceStep(), steps, to);
    if (q.headroom() != null) {
      step("/headroom/volume_step", q.headroom().volumeStep(), steps, to);
    }
    if (q.driverLevel() != null) {
      step("/driver_level/volume_step", q.driverLevel().volumeStep(), steps, to);
    }
  }

  private static void step(String at, Integer step, List<Integer> steps, Refusing to) {
    if (step != null && !steps.contains(step)) {
      to.refuse(STEP_NOT_MEASURED).at(at).given(step).allowed(Allowed.oneOf(steps));
    }
  }
}
