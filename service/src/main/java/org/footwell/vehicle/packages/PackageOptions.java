package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Patience;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.calculation.View;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.PlanReview;
import org.footwell.vehicle.packages.PackageOptionsResult.FittingCount;
import org.footwell.vehicle.packages.PackageOptionsResult.Proof;
import org.footwell.vehicle.packages.PackageOptionsResult.Relaxed;
import org.footwell.vehicle.packages.PackageOptionsResult.Screened;

/** Which packages of offered parts no other beats in a vehicle. */
public final class PackageOptions
    implements Calculation<PackageOptionsRequest, PackageOptionsResult> {

  static final Source TRIANGLE =
      Source.of("Triangle inequality: the modulus of a sum is at most the sum of the moduli");

  /** Share of the time left that the search may take; the rest is for the reviews. */
  private static final double SEARCHING = 0.6;

  private static final Card<PackageOptionsRequest, PackageOptionsResult> CARD =
      Card.of("package-options", PackageOptionsRequest.class, PackageOptionsResult.class)
          .title("Packages of parts that fit")
          .purpose(
              "From parts that are offered and the positions that are free in a vehicle: the packages"
                  + " that no other beats in price, level, reach and mass at once, with wiring,"
                  + " outputs, bridging, cables and fuses, each as a whole plan with its review.")
          .exampleBeside(PackageOptions.class)
          .sources(
              TRIANGLE,
              Importance.RANK_ORDER_CENTROID,
              Source.of(
                  "A. H. Land, A. G. Doig: An automatic method of solving discrete programming"
                      + " problems, Econometrica 28 (1960) 3: branch and bound (from memory)"),
              Source.COMMON_PRACTICE)
          .limits(
              "Channels, filters and crossovers are those of the plan: they are not adapted to the"
                  + " parts.",
              "All positions of a slot get the same part, all its channels the same kind of output, and"
                  + " all voice coils are driven alike.",
              "The level is searched by a bound; the review of each package listed says what it is.",
              "Whether several amplifiers find room beside each other is not looked at.",
              "What plan-review does not model is not in the packages either.")
          .findings(PackageFinding.values())
          .refusals(refusals())
          .cautions(Safety.values())
          .view(
              "packages_csv",
              "text/csv;charset=utf-8",
              "the packages listed, a row each",
              shown -> PackageSheet.csv(shown.request(), shown.answer().result()))
          .build();

  private static FaultCode[] refusals() {
    return Stream.concat(
            Stream.of(PackageFault.values()), new PlanReview().card().refusals().stream())
        .toArray(FaultCode[]::new);
  }

  private final Card<PackageOptionsRequest, PackageOptionsResult> card;

  public PackageOptions() {
    card = CARD;
  }

  /** With more forms of its answer, which are drawn from it elsewhere. */
  public PackageOptions(List<View<PackageOptionsRequest, PackageOptionsResult>> views) {
    card = CARD.with(views);
  }

  @Override
  public Card<PackageOptionsRequest, PackageOptionsResult> card() {
    return card;
  }

  /** Where a plan stands in the request. */
  static Rebase inPlan() {
    return Rebase.to("/plan", null).from("", "/plan");
  }

  @Override
  public PackageOptionsResult compute(PackageOptionsRequest q, Run run) {
    Patience patience = run.patience(SEARCHING);
    PlanIndex index = readable(q, run);
    SlotLayout layout = SlotLayout.of(q, index);
    List<Fillings> fillings =
        layout.slots().stream().map(slot -> Fillings.of(layout, slot)).toList();
    List<AmplifierChoice> amplifiers = AmplifierChoice.of(layout);
    Screening screening = new Screening(layout, fillings, amplifiers, run, patience);
    Limits limits = Limits.of(q.wishes(), screening.togetherDb());
    Search search = new Search(layout, screening, amplifiers, limits, patience);
    List<FoundPackage> front = search.run().packages();
    boolean complete = !screening.cutShort() && !search.cutShort() && !search.overfull();
    PackageList list = new PackageList(layout, screening.togetherDb(), front, run);
    List<Relaxed> relaxed = null;
    if (front.isEmpty()) {
      relaxed = none(layout, fillings, screening, amplifiers, limits, patience, run);
    }
    new PackageRemarks(q, run).remark(search, screening, front, list);
    return PackageOptionsResultBuilder.builder()
        .frontCount(front.size())
        .listedCount(list.listed().size())
        .stoppedCount(list.stopped())
        .fitting(fitting(layout, fillings))
        .proven(proof(layout, screening, search, front, list, complete))
        .relaxed(relaxed)
        .packages(list.listed())
        .build();
  }

  /** The plan as it stands must be one that can be reviewed. */
  private static PlanIndex readable(PackageOptionsRequest q, Run run) {
    return run.apart(
            VehiclePlan.class,
            inPlan(),
            own -> {
              new PlanReview().compute(q.plan(), own);
              return PlanIndex.of(q.plan(), own);
            })
        .value();
  }

  private static List<FittingCount> fitting(SlotLayout layout, List<Fillings> fillings) {
    List<FittingCount> counts = new ArrayList<>();
    for (SlotLayout.Slot slot : layout.slots()) {
      Fillings all = fillings.get(slot.index());
      counts.add(new FittingCount(slot.given().name(), all.partCount(), all.tooLarge()));
    }
    return counts;
  }

  /** Why there is no package: nothing fits, no output suits, or wishes exclude each other. */
  private static List<Relaxed> none(
      SlotLayout layout,
      List<Fillings> fillings,
      Screening screening,
      List<AmplifierChoice> amplifiers,
      Limits limits,
      Patience patience,
      Run run) {
    PackageRemarks remarks = new PackageRemarks(layout.request(), run);
    if (remarks.nothingFits(layout, fillings)) {
      return null;
    }
    Search unlimited = new Search(layout, screening, amplifiers, Limits.NONE, patience);
    List<PackageFigures> all =
        unlimited.run().packages().stream().map(FoundPackage::figures).toList();
    if (all.isEmpty()) {
      remarks.noOutputSuits();
      return null;
    }
    List<Relaxed> relaxed = new Conflicts(all, limits, screening.togetherDb()).smallest();
    remarks.excluding(relaxed);
    return relaxed;
  }

  private static Proof proof(
      SlotLayout layout,
      Screening screening,
      Search search,
      List<FoundPackage> front,
      PackageList list,
      boolean complete) {
    boolean all = list.listed().size() == front.size();
    PackageFigures best = search.bound();
    if (complete && !front.isEmpty()) {
      best = bestOf(front);
    }
    // Nothing is bounded yet where time was over before the search began.
    boolean any = (!front.isEmpty() || !complete) && Double.isFinite(best.massG());
    return PackageOptionsResultProofBuilder.builder()
        .frontComplete(complete)
        .allListed(all)
        .covers(covers(layout))
        .gapDb(complete && all && !front.isEmpty() ? (Double) list.gapDb() : null)
        .priceAtLeast(any ? Prices.of(best.price()) : null)
        .massChangeAtLeastG(any ? (Double) best.massG() : null)
        .lowestAtLeastHz(any ? (Double) best.reachHz() : null)
        .levelAtMostDbSpl(any ? (Double) (best.levelDb() + screening.togetherDb()) : null)
        .build();
  }

  private static PackageFigures bestOf(List<FoundPackage> front) {
    PackageFigures best = front.get(0).figures();
    for (FoundPackage one : front) {
      PackageFigures other = one.figures();
      best =
          new PackageFigures(
              Math.min(best.price(), other.price()),
              Math.min(best.massG(), other.massG()),
              Math.min(best.reachHz(), other.reachHz()),
              Math.max(best.levelDb(), other.levelDb()));
    }
    return best;
  }

  private static List<Screened> covers(SlotLayout layout) {
    PackageOptionsRequest q = layout.request();
    List<Screened> covers =
        new ArrayList<>(
            List.of(
                Screened.PRICE,
                Screened.MASS,
                Screened.REACH,
                Screened.LEVEL_BOUND,
                Screened.LOAD));
    if (q.slots().stream().allMatch(slot -> slot.opening() != null || slot.room() != null)) {
      covers.add(Screened.FIT);
    }
    if (q.plan().supply() != null) {
      covers.add(Screened.SUPPLY);
      if (q.amplifierPlace() != null && q.amplifierPlace().feed() != null) {
        covers.add(Screened.CABLE_AND_FUSE);
      }
    }
    return covers;
  }
}
