package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Verdict;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.PlanReview;
import org.footwell.vehicle.PlanReviewResult;
import org.footwell.vehicle.packages.PackageOptionsResult.FilledSlot;
import org.footwell.vehicle.packages.PackageOptionsResult.OfferedPackage;

/** The packages to list, each reviewed in full. */
final class PackageList {

  /** Reviews at most. */
  private static final int MOST_REVIEWED = 50;

  /** What all channels together make at most, dB SPL, the quietest of which allows L. */
  static final Formula.Of2 LEVEL_AT_MOST =
      Formula.of("level_at_most_db_spl", "L + K", "dB", PackageOptions.TRIANGLE)
          .with("L", "K", (quietest, together) -> quietest + together);

  private final SlotLayout layout;
  private final double togetherDb;
  private final Run run;
  private final List<OfferedPackage> listed = new ArrayList<>();
  private int stopped;

  PackageList(SlotLayout layout, double togetherDb, List<FoundPackage> front, Run run) {
    this.layout = layout;
    this.togetherDb = togetherDb;
    this.run = run;
    List<PackageFigures> figures = front.stream().map(FoundPackage::figures).toList();
    Importance importance = new Importance(layout.request().wishes().importance(), figures);
    List<FoundPackage> nearest = new ArrayList<>(front);
    nearest.sort(
        Comparator.comparingDouble((FoundPackage one) -> importance.distance(one.figures()))
            .thenComparingLong(one -> one.figures().price())
            .thenComparingDouble(one -> one.figures().massG()));
    for (FoundPackage one : nearest) {
      if (listed.size() == layout.request().listCount()
          || listed.size() + stopped == MOST_REVIEWED) {
        break;
      }
      add(one, importance.distance(one.figures()));
    }
    // What misses the level wished for stands behind what reaches it.
    listed.sort(Comparator.comparing(one -> !one.levelReached()));
  }

  List<OfferedPackage> listed() {
    return listed;
  }

  /** How many the review stops. */
  int stopped() {
    return stopped;
  }

  /** Most that the bound of one listed is above its level, dB. */
  double gapDb() {
    return listed.stream()
        .mapToDouble(one -> one.levelAtMostDbSpl() - one.levelDbSpl())
        .max()
        .orElse(0);
  }

  private void add(FoundPackage found, double distance) {
    VehiclePlan plan = PackagePlans.of(layout, found);
    Run.Apart<PlanReviewResult> review =
        run.apart(
            VehiclePlan.class, PackageOptions.inPlan(), own -> new PlanReview().compute(plan, own));
    if (review.verdict() == Verdict.STOP) {
      stopped++;
      return;
    }
    PackageFigures figures = found.figures();
    Double wanted = layout.request().wishes().levelDbSpl();
    double level = review.value().levelDbSpl();
    listed.add(
        PackageOptionsResultOfferedPackageBuilder.builder()
            .price(Prices.of(figures.price()))
            .massChangeG(figures.massG())
            .lowestHz(figures.reachHz())
            .levelAtMostDbSpl(run.apply(LEVEL_AT_MOST, figures.levelDb(), togetherDb))
            .levelDbSpl(level)
            .levelReached(wanted == null || level >= wanted)
            .distance(distance)
            .slots(slots(found, plan))
            .amplifiers(plan.amplifiers().stream().map(PlannedAmplifier::id).toList())
            .verdict(review.verdict())
            .codes(review.codes())
            .plan(plan)
            .review(review.value())
            .build());
  }

  /** In the order of the request. */
  private List<FilledSlot> slots(FoundPackage found, VehiclePlan plan) {
    Map<Integer, String> names = PackagePlans.names(found, layout.index().plan());
    List<FilledSlot> slots = new ArrayList<>();
    for (SlotLayout.Slot slot : layout.slots()) {
      for (int u = 0; u < found.units().size(); u++) {
        Choice choice = found.choices().get(u);
        String amplifier = names.get(found.amplifierOf().get(u));
        choice.fillings().stream()
            .filter(filling -> filling.slot().index() == slot.index())
            .forEach(filling -> slots.add(filled(filling, choice, amplifier, plan)));
      }
    }
    return slots;
  }

  private static FilledSlot filled(
      Filling filling, Choice choice, String amplifier, VehiclePlan plan) {
    return new FilledSlot(
        filling.slot().given().name(),
        filling.part().id(),
        filling.box() == null ? null : filling.box().id(),
        filling.stays(),
        filling.slot().sites().stream().map(site -> site.network(plan)).toList(),
        amplifier,
        choice.kind().bridged());
  }
}
