package org.footwell.vehicle.faults;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.footwell.Answers;
import org.footwell.vehicle.ModelledPlans;
import org.footwell.vehicle.faults.FaultFinderResult.Explanation;

/** Many vehicles with one planted fault each, and what the finder says of them. */
final class PlantedStudy {

  int all;
  int first;
  int second;
  int named;
  int namedWrong;
  int separable;
  int separableFirst;
  int nothingFits;
  int unseen;
  final Map<FaultKind, int[]> byKind = new TreeMap<>();
  final List<String> wrong = new ArrayList<>();

  /** One vehicle; false where its plan cannot be read with the fault in it. */
  void add(ObjectNode plan, PlantedFault fault, long seed) {
    FaultFinderResult found = answer(new MeasuredVehicle(plan, fault, seed, false).measured());
    Explanation best = found.explanations().get(0);
    boolean hit = says(best, fault);
    boolean sure = best.confidence() >= 0.9 && found.fits() && !best.faults().isEmpty();
    boolean soundSure = best.confidence() >= 0.9 && found.fits() && best.faults().isEmpty();
    boolean hidden = found.unseen().stream().anyMatch(fault::is);
    boolean parts = separable(new MeasuredVehicle(plan, fault, seed, true).measured(), fault);
    all++;
    unseen += hidden ? 1 : 0;
    first += hit ? 1 : 0;
    second +=
        !hit && found.explanations().size() > 1 && says(found.explanations().get(1), fault) ? 1 : 0;
    named += sure ? 1 : 0;
    nothingFits += found.fits() ? 0 : 1;
    separable += parts ? 1 : 0;
    separableFirst += parts && hit ? 1 : 0;
    int[] row = byKind.computeIfAbsent(fault.kinds().iterator().next(), any -> new int[4]);
    row[0]++;
    row[1] += hit ? 1 : 0;
    row[2] += parts ? 1 : 0;
    row[3] += parts && hit ? 1 : 0;
    if ((sure && !hit) || (parts && !hit)) {
      namedWrong += sure ? 1 : 0;
      wrong.add(
          (sure ? "WRONG " : soundSure ? "sound " : "late  ")
              + seed + " " + fault.kinds() + " " + fault.channels() + " " + fault.part()
              + " db " + fault.louderDb() + " ohm " + fault.jointOhm() + " " + fault.dead()
              + " -> "
              + found.explanations().stream().limit(3).map(e -> "%.2f %.0f %s".formatted(e.confidence(), e.chiSquare(), e.faults())).toList()
              + " fits " + found.fitProbability() + " of " + found.figureCount());
    }
  }

  private static boolean says(Explanation one, PlantedFault fault) {
    return (one.faults().size() == 1 && fault.is(one.faults().get(0)))
        || one.alike().stream().anyMatch(fault::is);
  }

  static FaultFinderResult answer(ObjectNode measured) {
    return Answers.of(new FaultFinder(), ModelledPlans.plan(measured)).result();
  }

  /** Whether without any error every other explanation is three standard deviations off. */
  private static boolean separable(ObjectNode exact, PlantedFault fault) {
    FaultFinderResult found = answer(exact);
    Explanation best = found.explanations().get(0);
    if (!says(best, fault)) {
      return false;
    }
    double next = found.soundChiSquare();
    for (Explanation one : found.explanations()) {
      if (!says(one, fault) && one.faults().size() < 2) {
        next = Math.min(next, one.chiSquare());
      }
    }
    return next - best.chiSquare() >= 9;
  }

  String told() {
    StringBuilder text = new StringBuilder();
    text.append(
        "planted %d: first %d, second %d; named %d, wrongly %d; separable %d, first %d; nothing fits %d; unseen %d%n"
            .formatted(all, first, second, named, namedWrong, separable, separableFirst, nothingFits, unseen));
    byKind.forEach(
        (kind, n) ->
            text.append(
                "  %s: %d, first %d, separable %d, first %d%n"
                    .formatted(kind, n[0], n[1], n[2], n[3])));
    wrong.forEach(line -> text.append(line).append('\n'));
    return text.toString();
  }

  /** Random vehicles from a range of seeds, a few faults of each. */
  static PlantedStudy random(long from, long to, int each) {
    PlantedStudy study = new PlantedStudy();
    for (long seed = from; seed <= to; seed++) {
      ObjectNode plan = org.footwell.vehicle.RandomPlans.of(seed);
      List<PlantedFault> faults = PlantedFault.in(plan, new Random(seed));
      for (int i = 0; i < Math.min(each, faults.size()); i++) {
        study.add(plan, faults.get(i), 1000 * seed + i);
      }
    }
    return study;
  }
}
