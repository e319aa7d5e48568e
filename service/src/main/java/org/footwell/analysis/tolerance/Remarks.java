package org.footwell.analysis.tolerance;

import static org.footwell.analysis.tolerance.ToleranceFinding.MEASURE_FIRST;
import static org.footwell.analysis.tolerance.ToleranceFinding.MEASURE_ONE_OF;
import static org.footwell.analysis.tolerance.ToleranceFinding.NO_INPUT_STANDS_OUT;
import static org.footwell.analysis.tolerance.ToleranceFinding.SAMPLES_REFUSED;
import static org.footwell.analysis.tolerance.ToleranceFinding.VERDICT_AT_RISK;

import java.util.List;
import org.footwell.analysis.Varied;
import org.footwell.calculation.Remark;
import org.footwell.calculation.Run;
import org.footwell.calculation.Verdict;
import org.footwell.calculation.text.Names;

/** Says what an error budget means, and which measurement is worth making next. */
final class Remarks {

  /** From this share on a worse verdict is more than bad luck; common practice, no source. */
  private static final double AT_RISK = 0.05;

  /** More candidates for the next measurement are not named. */
  private static final int MOST_NAMED = 5;

  private Remarks() {}

  static void on(ToleranceResult result, Run run) {
    onVerdict(result, run);
    onRefused(result, run);
    for (OutputBudget output : result.outputs()) {
      if (!output.drivers().isEmpty()) {
        onNext(output, run);
      }
    }
  }

  /** What is worse than harmless and turns up in some samples though not as stated. */
  private static void onVerdict(ToleranceResult result, Run run) {
    Verdict from = result.stated().orWorse(Verdict.NOTE);
    double worse = result.verdicts().worseThan(from);
    if (worse >= AT_RISK) {
      run.find(VERDICT_AT_RISK)
          .at(Varied.REQUEST)
          .value(100 * worse)
          .limit(100 * AT_RISK)
          .own("stated", Names.of(result.stated()))
          .own("worse", worseOnes(result, from));
    }
  }

  private static List<String> worseOnes(ToleranceResult result, Verdict than) {
    return List.of(Verdict.values()).stream()
        .filter(one -> one.compareTo(than) > 0 && result.verdicts().of(one) > 0)
        .map(Names::of)
        .toList();
  }

  private static void onRefused(ToleranceResult result, Run run) {
    double refused = result.verdicts().refused();
    if (refused > 0) {
      RefusedRuns why = result.refused().get(0);
      run.find(SAMPLES_REFUSED)
          .at(Varied.REQUEST + why.pointer())
          .value(refused * result.sampleCount())
          .limit(result.sampleCount())
          .own("place", why.pointer())
          .own("code", why.code());
    }
  }

  private static void onNext(OutputBudget output, Run run) {
    List<OutputDriver> first =
        output.drivers().stream()
            .filter(one -> one.rank() == 1 && one.strength().clearlyAboveZero())
            .toList();
    if (first.size() == 1) {
      about(output, run.find(MEASURE_FIRST))
          .own("input", first.get(0).input())
          .with("deviation", output.deviation())
          .with("left", first.get(0).deviationLeft());
    } else if (first.isEmpty()) {
      about(output, run.find(NO_INPUT_STANDS_OUT)).field("indices", "indices");
    } else {
      about(output, run.find(MEASURE_ONE_OF))
          .own("inputs", first.stream().limit(MOST_NAMED).map(OutputDriver::input).toList())
          .with("count", output.answeredCount());
    }
  }

  private static Remark about(OutputBudget output, Remark remark) {
    return remark
        .at("/outputs")
        .own("what", output.path())
        .with("mean", output.mean())
        .with("low", output.p5())
        .with("high", output.p95());
  }
}
