package org.footwell.vehicle.repair;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Patience;
import org.footwell.calculation.Verdict;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.repair.PlanRepairResult.ChangeLine;
import org.footwell.vehicle.repair.PlanRepairResult.Repair;
import org.footwell.vehicle.repair.PlanRepairResult.Trouble;

/**
 * Tries changes of a plan one by one, then the best of them in pairs, each by its review. Where time ends
 * before all are tried, what was found so far is what there is.
 */
final class RepairSearch {

  /** A repair that costs more level than this stands behind all that do not, dB. */
  static final double MOST_LOST_DB = 3;

  /** What is half as loud is no repair, dB. */
  private static final double MOST_BORNE_DB = 10;

  private final Reviewed before;
  private final Engine engine = new Engine();
  private final Arithmetic steps;
  private final int mostPaired;
  private final Patience patience;
  private int reviews = 1;
  private boolean cutShort;

  RepairSearch(Reviewed before, int mostPaired, Patience patience, Arithmetic steps) {
    this.before = before;
    this.mostPaired = mostPaired;
    this.patience = patience;
    this.steps = steps;
  }

  /** Changes that were tried together, and what comes of them. */
  record Tried(List<Change> changes, Reviewed after, Double lostDb) {

    boolean costsLevel() {
      return lostDb != null && lostDb > MOST_LOST_DB;
    }

    /** Less than a decibel is no reason to change more. */
    double wholeDbLost() {
      return lostDb == null ? 0 : Math.rint(Math.max(0, lostDb));
    }

    int effort() {
      return changes.stream().mapToInt(change -> change.kind().effort()).sum();
    }

    /** Null where a part has none. */
    BigDecimal price() {
      return changes.stream().allMatch(Tried::priced)
          ? changes.stream()
              .map(Change::price)
              .filter(Objects::nonNull)
              .reduce(BigDecimal.ZERO, BigDecimal::add)
          : null;
    }

    private static boolean priced(Change change) {
      boolean bought = change.kind().effort() >= RepairKind.CAPACITOR.effort();
      return change.price() != null || !bought || change.kind() == RepairKind.WIRING;
    }
  }

  /** What keeps the level first; of that what leaves least, then least effort, price and level lost. */
  static final Comparator<Tried> BEST =
      Comparator.comparing(Tried::costsLevel)
          .thenComparingInt((Tried tried) -> tried.after().weight())
          .thenComparingInt(Tried::effort)
          .thenComparing(Tried::price, Comparator.nullsLast(Comparator.naturalOrder()))
          .thenComparingDouble(Tried::wholeDbLost);

  /** How many plans were reviewed. */
  int reviews() {
    return reviews;
  }

  /** Everything that helps, the best first. */
  List<Tried> best(List<Change> changes) {
    List<Tried> singles = new ArrayList<>();
    for (Change change : changes) {
      if (outOfTime()) {
        break;
      }
      tried(before.plan(), List.of(change)).ifPresent(singles::add);
    }
    singles.sort(BEST);
    List<Tried> all = new ArrayList<>(singles);
    int paired = Math.min(mostPaired, singles.size());
    for (int i = 0; i < paired; i++) {
      for (int j = 0; j < i && !outOfTime(); j++) {
        pair(singles.get(j), singles.get(i)).ifPresent(all::add);
      }
    }
    all.sort(BEST);
    return all;
  }

  /** Whether time ended before everything was tried. */
  boolean cutShort() {
    return cutShort;
  }

  private boolean outOfTime() {
    cutShort |= !patience.lasts();
    return cutShort;
  }

  /** Two changes are worth it where together they clear more than each alone. */
  private Optional<Tried> pair(Tried one, Tried two) {
    Change first = one.changes().get(0);
    Change second = two.changes().get(0);
    int least = Math.min(one.after().weight(), two.after().weight());
    if (least == 0 || first.thing().equals(second.thing())) {
      return Optional.empty();
    }
    return tried(one.after().plan(), List.of(first, second))
        .filter(both -> both.after().weight() < least);
  }

  /**
   * The last of some changes made to a plan that has the others; empty where it does not help, or
   * where what it causes is as bad as the worst that it clears.
   */
  Optional<Tried> tried(VehiclePlan with, List<Change> changes) {
    VehiclePlan plan = changes.get(changes.size() - 1).made().apply(with);
    reviews++;
    return Reviewed.possibly(plan, engine)
        .filter(after -> helps(before.beyond(after), after.beyond(before)))
        .map(after -> new Tried(changes, after, before.lostIn(after, Arithmetic.SILENT)))
        .filter(done -> done.lostDb() == null || done.lostDb() <= MOST_BORNE_DB);
  }

  private static boolean helps(List<Trouble> cleared, List<Trouble> caused) {
    return !cleared.isEmpty() && (caused.isEmpty() || worst(caused).compareTo(worst(cleared)) < 0);
  }

  private static Verdict worst(List<Trouble> troubles) {
    return troubles.get(0).level();
  }

  /** As it is answered. */
  Repair line(Tried tried) {
    return PlanRepairResultRepairBuilder.builder()
        .changes(
            tried.changes().stream()
                .map(one -> new ChangeLine(one.kind(), one.places(), one.was(), one.becomes()))
                .toList())
        .effort(tried.effort())
        .price(tried.price())
        .levelLostDb(before.lostIn(tried.after(), steps))
        .verdict(tried.after().answer().verdict())
        .cleared(before.beyond(tried.after()))
        .left(
            tried.after().troubles().values().stream()
                .filter(one -> before.troubles().containsKey(one.code() + one.place()))
                .toList())
        .caused(tried.after().beyond(before))
        .build();
  }
}
