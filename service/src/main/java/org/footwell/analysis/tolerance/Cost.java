package org.footwell.analysis.tolerance;

import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;

/** What an error budget may cost. */
final class Cost {

  /** Runs of the calculation. */
  private static final int MOST_RUNS = 100_000;

  /** Numbers drawn: samples times what moves on its own. */
  private static final int MOST_DRAWN = 1_000_000;

  /** Inputs and groups that move on their own; as many as the sequence has coordinates. */
  private static final int MOST_DRAWS = 1000;

  private Cost() {}

  /** Refuses what costs more, and says what would fit. */
  static void require(ToleranceRequest q, int draws, Run run) {
    if (draws > MOST_DRAWS) {
      run.refuse(ToleranceFault.TOO_MANY_UNCERTAIN).at("/inputs").given(draws).limit(MOST_DRAWS);
    }
    int runsOfOne = Sampling.runsOfOne(draws, q.indices());
    long runs = (long) q.sampleCount() * runsOfOne;
    if (runs > MOST_RUNS) {
      int fitting = MOST_RUNS / runsOfOne;
      run.refuse(ToleranceFault.TOO_MANY_RUNS)
          .at("/sample_count")
          .given(runs)
          .limit(MOST_RUNS)
          .allowed(Allowed.atMost(fitting, ""));
    }
    long drawn = (long) q.sampleCount() * draws;
    if (drawn > MOST_DRAWN) {
      int fitting = MOST_DRAWN / draws;
      run.refuse(ToleranceFault.TOO_MANY_DRAWS)
          .at("/sample_count")
          .with("samples", q.sampleCount())
          .with("inputs", draws)
          .limit(MOST_DRAWN)
          .allowed(Allowed.atMost(fitting, ""));
    }
  }
}
