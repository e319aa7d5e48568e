package org.footwell.analysis.tolerance;

import static org.footwell.analysis.tolerance.ToleranceFinding.MEASURE_FIRST;
import static org.footwell.analysis.tolerance.ToleranceFinding.MEASURE_ONE_OF;
import static org.footwell.analysis.tolerance.ToleranceFinding.NO_INPUT_STANDS_OUT;
import static org.footwell.analysis.tolerance.ToleranceFinding.SAMPLES_REFUSED;
import static org.footwell.analysis.tolerance.ToleranceFinding.VERDICT_AT_RISK;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.footwell.analysis.Varied;
import org.footwell.calculation.Run;
import org.footwell.calculation.Verdict;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;

/** Says what an error budget means, and which measurement is worth making next. */
final class Remarks {

  /** From this share on a worse verdict is more than bad luck; common practice, no source. */
  private static final double AT_RISK = 0.05;

  /** More inputs or outputs of a sentence are not named. */
  private static final int MOST_NAMED = 5;

  private Remarks() {}

  static void on(ToleranceResult result, Run run) {
    onVerdict(result, run);
    onRefused(result, run);
    onNext(result, run);
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
          .value((double) Math.round(refused * result.sampleCount()))
          .limit(result.sampleCount())
          .own("place", why.pointer())
          .own("code", why.code());
    }
  }

  /** Outputs that the same inputs drive most are told together. */
  private static void onNext(ToleranceResult result, Run run) {
    Map<List<String>, List<OutputBudget>> byLeaders = new LinkedHashMap<>();
    for (OutputBudget output : result.outputs()) {
      if (!output.drivers().isEmpty()) {
        byLeaders.computeIfAbsent(leaders(output), first -> new ArrayList<>()).add(output);
      }
    }
    byLeaders.forEach((inputs, outputs) -> onNext(inputs, outputs, run));
  }

  /** The inputs that drive an output most, as far as the samples tell them apart. */
  private static List<String> leaders(OutputBudget output) {
    return output.drivers().stream()
        .filter(one -> one.rank() == 1 && one.strength().clearlyAboveZero())
        .map(OutputDriver::input)
        .toList();
  }

  private static void onNext(List<String> inputs, List<OutputBudget> outputs, Run run) {
    List<Phrase> spreads = said(outputs, Spread::around);
    if (inputs.size() == 1) {
      run.find(MEASURE_FIRST)
          .at("/outputs")
          .with("outputs", spreads)
          .own("input", inputs.get(0))
          .with("left", said(outputs, Spread::left));
    } else if (inputs.isEmpty()) {
      run.find(NO_INPUT_STANDS_OUT)
          .at("/outputs")
          .with("outputs", spreads)
          .field("indices", "indices");
    } else {
      run.find(MEASURE_ONE_OF)
          .at("/outputs")
          .with("outputs", spreads)
          .own("inputs", inputs.stream().limit(MOST_NAMED).toList())
          .with("count", outputs.get(0).answeredCount());
    }
  }

  private static List<Phrase> said(
      List<OutputBudget> outputs, Function<OutputBudget, Phrase> said) {
    return outputs.stream().limit(MOST_NAMED).map(said).toList();
  }
}
