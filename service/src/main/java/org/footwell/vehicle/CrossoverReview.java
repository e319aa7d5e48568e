package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.acoustic.crossover.CrossoverFinding;
import org.footwell.acoustic.crossover.CrossoverPlan;
import org.footwell.acoustic.crossover.CrossoverPlanRequest;
import org.footwell.acoustic.crossover.CrossoverPlanResult;
import org.footwell.acoustic.crossover.CrossoverPlanResult.PlannedCrossover;
import org.footwell.acoustic.crossover.CrossoverWay;
import org.footwell.acoustic.crossover.CrossoverWayBuilder;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.parts.Crossover;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Filter;
import org.footwell.parts.WayRole;
import org.footwell.vehicle.PlanReviewResult.CrossoverLine;

/** Whether both drivers are at ease where one channel hands over to another. */
final class CrossoverReview {

  private static final CrossoverPlan CROSSOVER_PLAN = new CrossoverPlan();

  /** A corner further than half an octave from its crossover is not for it; common practice. */
  private static final double APART_RATIO = Math.sqrt(2);

  /** Bounds of the level that crossover-plan takes, dB SPL. */
  private static final double LEAST_DB_SPL = 60;

  private static final double MOST_DB_SPL = 140;

  private final VehiclePlan plan;
  private final Resolved resolved;
  private final Run run;
  private final List<Double> levels;

  /**
   * Judges crossovers at levels.
   *
   * @param levels what each channel reaches, dB SPL; null where it is not known
   */
  CrossoverReview(VehiclePlan plan, Resolved resolved, Run run, List<Double> levels) {
    this.plan = plan;
    this.resolved = resolved;
    this.run = run;
    this.levels = levels;
  }

  /** One line for every crossover whose drivers are known well enough. */
  List<CrossoverLine> lines() {
    List<CrossoverLine> lines = new ArrayList<>();
    for (int i = 0; i < plan.crossovers().size(); i++) {
      line(i).ifPresent(lines::add);
    }
    return lines;
  }

  private Optional<CrossoverLine> line(int index) {
    Crossover crossover = plan.crossovers().get(index);
    int lower = channel(crossover.lower());
    int upper = channel(crossover.upper());
    // At the crossover the lower channel plays with its highest driver, the upper with its lowest.
    Optional<VehiclePlan.Part> below = parts(lower).max(byResonance());
    Optional<VehiclePlan.Part> above = parts(upper).min(byResonance());
    Double level = levels.get(upper);
    if (below.isEmpty() || above.isEmpty() || level == null) {
      return Optional.empty();
    }
    return run.call(
            CROSSOVER_PLAN,
            request(lower, below.get(), upper, above.get(), level),
            Rebase.to("/crossovers/" + index, null).without(CrossoverFinding.values()))
        .map(CrossoverPlanResult::crossovers)
        .map(windows -> judged(index, crossover, windows.get(0)));
  }

  private int channel(String id) {
    return IntStream.range(0, plan.channels().size())
        .filter(c -> plan.channels().get(c).id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** The parts of a channel, or none if one of them is not known well enough. */
  private Stream<VehiclePlan.Part> parts(int channel) {
    List<VehiclePlan.Part> parts =
        resolved.driversOf(channel).stream().map(resolved::part).distinct().toList();
    return parts.stream().allMatch(part -> part.sdCm2() != null && part.impedance() != null)
        ? parts.stream()
        : Stream.empty();
  }

  private static Comparator<VehiclePlan.Part> byResonance() {
    return Comparator.comparing(part -> part.impedance().fsHz());
  }

  private CrossoverPlanRequest request(
      int lower, VehiclePlan.Part below, int upper, VehiclePlan.Part above, double level) {
    // The level is that of the programme; a sine with the same peaks is louder by the difference.
    double crest = plan.programme() == null ? 0 : plan.programme().crestFactorDb() - 3.01;
    double wanted = Math.max(LEAST_DB_SPL, Math.min(MOST_DB_SPL, level + crest));
    // Beyond this distance the cabin keeps the level up.
    double distance = DriverLevel.cabin(plan).criticalDistanceM();
    return CrossoverPlanRequest.standard(
        List.of(way(lower, below), way(upper, above)),
        wanted,
        distance,
        plan.vehicle().temperatureC());
  }

  private CrossoverWay way(int channel, VehiclePlan.Part part) {
    boolean subwoofer = plan.channels().get(channel).role() == VehiclePlan.Role.SUBWOOFER;
    return CrossoverWayBuilder.builder()
        .id(plan.channels().get(channel).id())
        .role(subwoofer ? WayRole.SUBWOOFER : WayRole.WOOFER)
        .driver(
            DriverBuilder.builder()
                .sdCm2(part.sdCm2())
                .fsHz(part.impedance().fsHz())
                .xmaxMm(part.xmaxMm())
                .ratedOhm(part.ratedOhm())
                .build())
        .build();
  }

  private CrossoverLine judged(int index, Crossover crossover, PlannedCrossover window) {
    double frequency = crossover.frequencyHz();
    Double lowest = window.lowestHz();
    boolean tooLow = lowest != null && frequency < lowest;
    if (tooLow || frequency > window.highestHz()) {
      run.find(tooLow ? PlanFinding.CROSSOVER_TOO_LOW : PlanFinding.CROSSOVER_TOO_HIGH)
          .at("/crossovers/" + index + "/frequency_hz")
          .value(frequency)
          .limit(tooLow ? lowest : window.highestHz())
          .own("channel", tooLow ? crossover.upper() : crossover.lower())
          .with("reason", tooLow ? window.lowestReason() : window.highestReason());
    }
    return new CrossoverLine(
        crossover.lower(),
        crossover.upper(),
        frequency,
        lowest,
        window.lowestReason(),
        window.highestHz(),
        window.highestReason());
  }

  /** Its words go on with a comma in sentences of crossover-plan. */
  /** Holds the filters of both channels against the crossover they are said to make. */
  void remarkFilters() {
    for (Crossover crossover : plan.crossovers()) {
      int lower = channel(crossover.lower());
      int upper = channel(crossover.upper());
      remarkFilter(
          plan.channels().get(lower).lowPass(),
          "/channels/" + lower + "/low_pass",
          crossover.lower(),
          crossover.frequencyHz());
      remarkFilter(
          plan.channels().get(upper).highPass(),
          "/channels/" + upper + "/high_pass",
          crossover.upper(),
          crossover.frequencyHz());
    }
  }

  private void remarkFilter(Filter filter, String at, String channel, double crossoverHz) {
    if (filter != null
        && Math.abs(Math.log(filter.frequencyHz() / crossoverHz)) > Math.log(APART_RATIO)) {
      run.find(PlanFinding.FILTER_OFF_CROSSOVER)
          .at(at + "/frequency_hz")
          .value(filter.frequencyHz())
          .limit(crossoverHz)
          .own("channel", channel);
    }
  }
}
