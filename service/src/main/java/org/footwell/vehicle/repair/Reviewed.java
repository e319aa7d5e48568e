package org.footwell.vehicle.repair;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Source;
import org.footwell.calculation.Verdict;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.PlanReview;
import org.footwell.vehicle.PlanReviewResult;
import org.footwell.vehicle.repair.PlanRepairResult.Trouble;

/**
 * A plan with its review.
 *
 * @param troubles its warnings and stops by code and place
 */
record Reviewed(VehiclePlan plan, Answer<PlanReviewResult> answer, Map<String, Trouble> troubles) {

  private static final Formula.Of2 LEVEL_LOST =
      Formula.of("level_lost_db", "L1 − L2", "dB", Source.DEFINITION)
          .with("L1", "L2", (before, after) -> before - after);

  private static final Duration LONG = Duration.ofSeconds(20);

  /** What is measured in a vehicle is not mended by another plan. */
  private static final String MEASURED = "measured-";

  /** A stop weighs more than all warnings. */
  private static final int STOP_WEIGHT = 1000;

  /** Reviews a plan with a change; empty where it cannot be reviewed. */
  static Optional<Reviewed> possibly(VehiclePlan plan, Engine engine) {
    try {
      return Optional.of(of(plan, engine));
    } catch (Refused refused) {
      return Optional.empty();
    }
  }

  /**
   * Reviews a plan.
   *
   * @throws Refused with the faults of the review
   */
  static Reviewed of(VehiclePlan plan, Engine engine) {
    Answer<PlanReviewResult> answer = engine.answer(new PlanReview(), plan, false, LONG);
    Map<String, Trouble> troubles = new TreeMap<>();
    for (Finding finding : answer.findings()) {
      if (finding.level().compareTo(Verdict.WARNING) >= 0 && !finding.code().startsWith(MEASURED)) {
        places(finding)
            .map(place -> new Trouble(finding.level(), finding.code(), place))
            .forEach(trouble -> troubles.put(trouble.code() + trouble.place(), trouble));
      }
    }
    return new Reviewed(plan, answer, troubles);
  }

  private static Stream<String> places(Finding finding) {
    return finding.places() == null ? Stream.of(finding.pointer()) : finding.places().stream();
  }

  /** Whether something measured is not as the plan has it. */
  boolean measuredOff() {
    return answer.findings().stream().anyMatch(one -> one.code().startsWith(MEASURED));
  }

  /** Troubles that another review does not have, worst first. */
  List<Trouble> beyond(Reviewed other) {
    return troubles.entrySet().stream()
        .filter(entry -> !other.troubles.containsKey(entry.getKey()))
        .map(Map.Entry::getValue)
        .sorted(Comparator.comparing(Trouble::level).reversed())
        .toList();
  }

  /** How much is wrong: stops before warnings. */
  int weight() {
    return troubles.values().stream()
        .mapToInt(one -> one.level() == Verdict.STOP ? STOP_WEIGHT : 1)
        .sum();
  }

  /** Level another review has less, dB: together or of the channel that loses most; null where unknown. */
  Double lostIn(Reviewed after, Arithmetic steps) {
    PlanReviewResult was = answer.result();
    PlanReviewResult is = after.answer.result();
    if (was.levelDbSpl() == null || is.levelDbSpl() == null) {
      return null;
    }
    double before = was.levelDbSpl();
    double now = is.levelDbSpl();
    for (int c = 0; c < was.channels().size(); c++) {
      Double own = was.channels().get(c).levelDbSpl();
      Double left = is.channels().get(c).levelDbSpl();
      if (own != null && left != null && own - left > before - now) {
        before = own;
        now = left;
      }
    }
    return steps.apply(LEVEL_LOST, before, now);
  }
}
