package org.footwell.vehicle.faults;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.footwell.Answers;
import org.footwell.vehicle.ModelledPlans;
import org.footwell.vehicle.RandomPlans;
import org.footwell.vehicle.faults.FaultFinderResult.Explanation;
import org.footwell.vehicle.faults.MeasuredVehicle.Kind;

/** Many vehicles with one planted fault each, and what the finder says of them. */
final class PlantedStudy {

  private final Kind kind;
  private final Map<FaultKind, int[]> byKind = new TreeMap<>();
  private final List<String> misses = new ArrayList<>();

  int all;
  int first;
  int second;
  int named;
  int namedWrongly;
  int separable;
  int separableFirst;
  int nothingFits;
  int unseen;

  PlantedStudy(Kind kind) {
    this.kind = kind;
  }

  /** Random vehicles from a range of seeds, a few faults of each. */
  PlantedStudy random(long from, long to, int each) {
    for (long seed = from; seed <= to; seed++) {
      add(RandomPlans.of(seed), seed, each);
    }
    return this;
  }

  /** A few faults of one vehicle. */
  PlantedStudy add(ObjectNode plan, long seed, int most) {
    List<PlantedFault> faults = PlantedFault.in(plan, new Random(seed));
    for (int i = 0; i < Math.min(most, faults.size()); i++) {
      add(plan, faults.get(i), 1000 * seed + i);
    }
    return this;
  }

  private void add(ObjectNode plan, PlantedFault fault, long seed) {
    FaultFinderResult found = answer(new MeasuredVehicle(plan, fault, seed, kind).measured());
    Explanation best = found.explanations().get(0);
    boolean hit = says(best, fault);
    boolean sure = best.confidence() >= 0.9 && found.fits() && !best.faults().isEmpty();
    boolean parts = separable(new MeasuredVehicle(plan, fault, seed, Kind.EXACT).measured(), fault);
    all++;
    first += count(hit);
    second +=
        count(!hit && found.explanations().size() > 1 && says(found.explanations().get(1), fault));
    named += count(sure);
    namedWrongly += count(sure && !hit);
    separable += count(parts);
    separableFirst += count(parts && hit);
    nothingFits += count(!found.fits());
    unseen += count(found.unseen().stream().anyMatch(fault::is));
    int[] row = byKind.computeIfAbsent(fault.kinds().iterator().next(), any -> new int[4]);
    row[0]++;
    row[1] += count(hit);
    row[2] += count(parts);
    row[3] += count(parts && hit);
    if (!hit && (sure || parts)) {
      misses.add(seed + " " + fault.kinds() + " " + fault.channels() + " -> " + best);
    }
  }

  private static int count(boolean yes) {
    return yes ? 1 : 0;
  }

  private static boolean says(Explanation one, PlantedFault fault) {
    return Stream.concat(
            Stream.of(one.faults()),
            one.alike().stream().map(FaultFinderResult.Alternative::faults))
        .anyMatch(faults -> faults.size() == 1 && fault.is(faults.get(0)));
  }

  static FaultFinderResult answer(ObjectNode measured) {
    return Answers.of(new FaultFinder(), ModelledPlans.plan(measured)).result();
  }

  /**
   * Whether without any error it shows, and nothing else that is single comes nearer than three
   * standard deviations to what is measured.
   */
  private static boolean separable(ObjectNode exact, PlantedFault fault) {
    FaultFinderResult found = answer(exact);
    return found.soundChiSquare() >= 9
        && found.explanations().stream()
            .filter(one -> !says(one, fault) && one.faults().size() < 2)
            .allMatch(one -> one.chiSquare() >= 9);
  }

  /** What came out, by kinds, with everything that was missed. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    text.append(
        "%d planted: first %d, second %d; named %d, wrongly %d; separable %d, of them first %d;"
            .formatted(all, first, second, named, namedWrongly, separable, separableFirst));
    text.append(" nothing fits %d; would not show %d%n".formatted(nothingFits, unseen));
    byKind.forEach(
        (of, n) ->
            text.append(
                "%s: %d, first %d; separable %d, first %d%n"
                    .formatted(of, n[0], n[1], n[2], n[3])));
    misses.forEach(line -> text.append(line).append('\n'));
    return text.toString();
  }
}
