package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.footwell.acoustic.alignment.PhaseMatch;
import org.footwell.acoustic.crossover.CrossoverWindow;
import org.footwell.acoustic.crossover.PlannedWays;
import org.footwell.acoustic.crossover.WantedLevel;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Words;
import org.footwell.parts.Crossover;
import org.footwell.parts.Driver;
import org.footwell.parts.Filter;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Octaves;
import org.footwell.vehicle.PlanReviewResult.CrossoverLine;
import org.footwell.vehicle.chain.Alignment;
import org.footwell.vehicle.reading.ModelReader;
import org.footwell.vehicle.reading.Modelled;

/** How channels hand over to each other: whether both drivers are at ease, and how they add there. */
final class CrossoverReview {

  /** A corner further from its crossover is not for it, octaves; common practice. */
  private static final double APART_OCTAVES = 0.5;

  /** A loss that remains with the best delay and is worth a word, dB; common practice, no source. */
  private static final double CANCELS_DB = -3;

  private final Modelled modelled;
  private final PlanIndex index;
  private final VehiclePlan plan;
  private final Run run;
  private final PlannedWays ways;
  private final Map<Outside, List<Integer>> outside = new LinkedHashMap<>();
  private final Map<Outside, Double> limits = new HashMap<>();

  CrossoverReview(Modelled modelled, Run run) {
    this.modelled = modelled;
    this.index = modelled.index();
    this.plan = index.plan();
    this.run = run;
    ways = new PlannedWays(index);
  }

  /** One line per crossover of the plan. */
  List<CrossoverLine> lines() {
    remarkMatches();
    List<CrossoverLine> lines = new ArrayList<>();
    for (int i = 0; i < plan.crossovers().size(); i++) {
      lines.add(line(i));
      remarkFilters(plan.crossovers().get(i));
    }
    remarkOutside();
    return lines;
  }

  private CrossoverLine line(int i) {
    Crossover crossover = plan.crossovers().get(i);
    Optional<CrossoverWindow> window = window(i);
    window.ifPresent(found -> judge(i, crossover, found));
    Optional<Alignment.Matched> matched =
        modelled.alignment().matched().stream()
            .filter(one -> one.crossing().ups().stream().anyMatch(up -> up.crossover() == i))
            .findFirst();
    boolean turned =
        matched.isPresent() && modelled.alignment().turn(index.channel(crossover.lower())) < 0;
    Optional<PhaseMatch.Setting> setting =
        matched.map(one -> turned ? one.match().inverted() : one.match().asGiven());
    return PlanReviewResultCrossoverLineBuilder.builder()
        .lower(crossover.lower())
        .upper(crossover.upper())
        .frequencyHz(crossover.frequencyHz())
        .lowestHz(window.map(CrossoverWindow::lowestHz).orElse(null))
        .lowestReason(window.map(CrossoverWindow::lowestReason).orElse(null))
        .highestHz(window.map(CrossoverWindow::highestHz).orElse(null))
        .highestReason(window.map(CrossoverWindow::highestReason).orElse(null))
        .lossDb(setting.map(PhaseMatch.Setting::lossDb).orElse(null))
        .flightLossDb(matched.map(one -> one.match().asGiven().flightLossDb()).orElse(null))
        .movedMs(setting.map(PhaseMatch.Setting::delayMs).orElse(null))
        .inverted(matched.isPresent() ? (Boolean) turned : null)
        .build();
  }

  private void remarkMatches() {
    for (Alignment.Matched matched : modelled.alignment().matched()) {
      int lower = matched.crossing().lower();
      boolean turned = modelled.alignment().turn(lower) < 0;
      PhaseMatch.Setting setting = turned ? matched.match().inverted() : matched.match().asGiven();
      List<String> at =
          matched.crossing().ups().stream().map(up -> "/crossovers/" + up.crossover()).toList();
      String name = plan.channels().get(lower).id();
      if (turned) {
        run.find(PlanFinding.POLARITY_TO_TURN)
            .at(at)
            .value(matched.match().asGiven().lossDb())
            .limit(setting.lossDb())
            .own("name", name);
      }
      if (setting.atEdge()) {
        run.find(PlanFinding.DELAY_AT_EDGE).at(at).value(setting.delayMs()).own("name", name);
      }
      if (setting.lossDb() < CANCELS_DB) {
        run.find(PlanFinding.CROSSOVER_CANCELS)
            .at(at)
            .value(-setting.lossDb())
            .limit(-CANCELS_DB)
            .own("name", name)
            .with("frequency", matched.crossing().highestHz());
      }
    }
  }

  private Optional<CrossoverWindow> window(int i) {
    Crossover crossover = plan.crossovers().get(i);
    List<Integer> lower = ways.of(index.channel(crossover.lower()));
    int channel = index.channel(crossover.upper());
    // At the crossover the lower channel plays with its highest driver, the upper with its lowest.
    int below = lower.get(lower.size() - 1);
    int above = ways.of(channel).get(0);
    if (!windowKnown(below)
        || !windowKnown(above)
        || !modelled.model().channels().get(channel).chain().heard()) {
      return Optional.empty();
    }
    WantedLevel wanted =
        new WantedLevel(
            modelled.sineDbSpl(channel),
            plan.vehicle().cabin().criticalDistanceM(),
            plan.programme().crestFactorDb(),
            ModelReader.spectrum(plan.programme()));
    return Optional.of(
        CrossoverWindow.of(
            ways.way(below), ways.way(above), wanted, plan.vehicle().temperatureC()));
  }

  private boolean windowKnown(int driver) {
    Driver data = index.part(driver).driver();
    return data.sdCm2() != null && data.fsHz() != null;
  }

  /** What is alike for several crossovers is said once. */
  private record Outside(boolean tooLow, double hz, String limit, Enum<?> reason) {}

  private void judge(int i, Crossover crossover, CrossoverWindow window) {
    double frequency = crossover.frequencyHz();
    Double lowest = window.lowestHz();
    boolean tooLow = lowest != null && frequency < lowest;
    if (tooLow || frequency > window.highestHz()) {
      double limit = tooLow ? lowest : window.highestHz();
      Outside found =
          new Outside(
              tooLow,
              frequency,
              String.format(Locale.ROOT, "%.3g", limit),
              tooLow ? window.lowestReason() : window.highestReason());
      outside.computeIfAbsent(found, any -> new ArrayList<>()).add(i);
      limits.putIfAbsent(found, limit);
    }
  }

  private void remarkOutside() {
    outside.forEach(
        (found, which) ->
            run.find(
                    found.tooLow() ? PlanFinding.CROSSOVER_TOO_LOW : PlanFinding.CROSSOVER_TOO_HIGH)
                .at(which.stream().map(i -> "/crossovers/" + i + "/frequency_hz").toList())
                .value(found.hz())
                .limit(limits.get(found))
                .own("names", which.stream().map(i -> name(found, i)).distinct().toList())
                .with("reason", (Words) found.reason()));
  }

  private String name(Outside found, int i) {
    Crossover crossover = plan.crossovers().get(i);
    return found.tooLow() ? crossover.upper() : crossover.lower();
  }

  /** Holds the filters of both channels against the crossover they are said to make. */
  private void remarkFilters(Crossover crossover) {
    int lower = index.channel(crossover.lower());
    int upper = index.channel(crossover.upper());
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

  private void remarkFilter(Filter filter, String at, String channel, double crossoverHz) {
    if (filter != null
        && Math.abs(Octaves.between(crossoverHz, filter.frequencyHz())) > APART_OCTAVES) {
      run.find(PlanFinding.FILTER_OFF_CROSSOVER)
          .at(at + "/frequency_hz")
          .value(filter.frequencyHz())
          .limit(crossoverHz)
          .own("channel", channel);
    }
  }
}
