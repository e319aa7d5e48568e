package org.footwell.vehicle.repair;

import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Patience;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.reading.PlaysPlan;
import org.footwell.vehicle.repair.PlanRepairResult.Repair;

/** The smallest changes that clear the warnings and stops of a plan. */
public final class PlanRepair implements Calculation<VehiclePlan, PlanRepairResult>, PlaysPlan {

  /** More changes are not tried than this. */
  private static final int MOST_CHANGES = 300;

  /** Share of the time left in which changes are tried; the rest is for the last review and the answer. */
  private static final double SEARCHING = 0.9;

  private static final int MOST_PAIRED = 14;
  private static final int MOST_LISTED = 12;

  @Override
  public Card<VehiclePlan, PlanRepairResult> card() {
    return RepairCard.CARD;
  }

  @Override
  public PlanRepairResult compute(VehiclePlan plan, Run run) {
    Patience patience = run.patience(SEARCHING);
    Reviewed before = Reviewed.of(plan, new Engine());
    List<Change> changes =
        new ChangeList(
                PlanIndex.of(plan, run), before.answer().result(), before.troubles().values())
            .all();
    RepairSearch search = new RepairSearch(before, MOST_PAIRED, patience, run);
    List<RepairSearch.Tried> best =
        search.best(changes.stream().limit(MOST_CHANGES).toList()).stream()
            .limit(MOST_LISTED)
            .toList();
    List<Repair> repairs = best.stream().map(search::line).toList();
    remark(before, repairs, run);
    boolean complete = !search.cutShort() && changes.size() <= MOST_CHANGES;
    if (!complete) {
      run.find(RepairFinding.REPAIRS_CUT_SHORT).value(search.reviews() - 1).limit(changes.size());
    }
    return new PlanRepairResult(
        before.answer().verdict(),
        List.copyOf(before.troubles().values()),
        search.reviews(),
        complete,
        repairs);
  }

  private static void remark(Reviewed before, List<Repair> repairs, Run run) {
    if (before.measuredOff()) {
      run.find(RepairFinding.MEASURED_NOT_REPAIRED).at("/measured");
    }
    if (before.troubles().isEmpty()) {
      return;
    }
    if (repairs.isEmpty()) {
      run.find(RepairFinding.NO_REPAIR).value(before.troubles().size());
      return;
    }
    Repair first = repairs.get(0);
    boolean clear = first.left().isEmpty() && first.caused().isEmpty();
    run.find(clear ? RepairFinding.REPAIR_CLEARS_ALL : RepairFinding.REPAIR_LEAVES_SOME)
        .value(first.cleared().size())
        .limit(before.troubles().size())
        .with("changes", first.changes().stream().map(PlanRepair::phrase).toList());
    Double lost = first.levelLostDb();
    if (lost != null && lost > RepairSearch.MOST_LOST_DB) {
      run.find(RepairFinding.REPAIR_COSTS_LEVEL).value(lost).limit(RepairSearch.MOST_LOST_DB);
    }
  }

  private static Phrase phrase(PlanRepairResult.ChangeLine change) {
    return change.becomes() == null
        ? Phrase.of(ChangeWords.AS_ADVISED).own("place", change.places())
        : Phrase.of(change.change()).own("place", change.places()).own("becomes", change.becomes());
  }
}
