package org.footwell.vehicle.repair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.footwell.Answers;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Engine;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Patience;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.ModelledPlans;
import org.footwell.vehicle.PlanReview;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every single change and every pair of changes, reviewed one by one without any choice among them; and what
 * there is of them where time ends before.
 */
@Tag("long")
class ExhaustiveRepairTest {

  /** What a search finds, and how many changes there were. */
  private record Found(List<RepairSearch.Tried> all, int changes, RepairSearch search) {

    RepairSearch.Tried best() {
      return all.get(0);
    }
  }

  /** Searches within a run, as the calculation does. */
  private record Searching(int paired, Patience patience, AtomicReference<Found> into)
      implements Calculation<VehiclePlan, ModelledPlans.Read> {

    @Override
    public Card<VehiclePlan, ModelledPlans.Read> card() {
      return Card.of("search", VehiclePlan.class, ModelledPlans.Read.class)
          .title("A search")
          .purpose("For tests")
          .example("{}")
          .sources(Source.DEFINITION)
          .limits("For tests")
          .refusals(new PlanReview().card().refusals().toArray(FaultCode[]::new))
          .build();
    }

    @Override
    public ModelledPlans.Read compute(VehiclePlan plan, Run run) {
      PlanIndex index = PlanIndex.of(plan, run);
      Reviewed before = Reviewed.of(plan, new Engine());
      List<Change> changes =
          new ChangeList(index, before.answer().result(), before.troubles().values()).all();
      RepairSearch search = new RepairSearch(before, paired, patience, run);
      List<RepairSearch.Tried> best =
          paired < 0 ? all(search, before, changes) : search.best(changes);
      into.set(new Found(best, changes.size(), search));
      return new ModelledPlans.Read(true);
    }

    private static List<RepairSearch.Tried> all(
        RepairSearch search, Reviewed before, List<Change> changes) {
      List<RepairSearch.Tried> all = new ArrayList<>();
      for (Change one : changes) {
        search.tried(before.plan(), List.of(one)).ifPresent(all::add);
        for (Change two : changes) {
          if (!one.thing().equals(two.thing())) {
            search.tried(one.made().apply(before.plan()), List.of(one, two)).ifPresent(all::add);
          }
        }
      }
      all.sort(RepairSearch.BEST);
      return all;
    }
  }

  private static Found found(String plan, int paired) throws IOException {
    return found(plan, paired, () -> true);
  }

  private static Found found(String plan, int paired, Patience patience) throws IOException {
    Path file = Path.of("src/test/resources/codes/plan-review/" + plan + ".json");
    AtomicReference<Found> into = new AtomicReference<>();
    Answers.of(
        new Searching(paired, patience, into),
        ModelledPlans.plan(Trees.MAPPER.readTree(Files.readString(file))));
    return into.get();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cable-overloaded",
        "fuse-too-large",
        "heat-beyond-rating",
        "movement-beyond-xmax",
        "role-uneven",
        "tweeter-unprotected",
        "coils-unlike",
        "filter-off-crossover"
      })
  void nothingBetterIsThereThanWhatIsFound(String plan) throws IOException {
    Found bounded = found(plan, 14);
    Found exhaustive = found(plan, -1);
    assertTrue(bounded.changes() > 3);
    assertEquals(exhaustive.best().costsLevel(), bounded.best().costsLevel());
    assertEquals(exhaustive.best().after().weight(), bounded.best().after().weight());
    assertEquals(exhaustive.best().effort(), bounded.best().effort());
  }

  /** Time that ends after so many looks at the clock. */
  private static Patience lasting(int looks) {
    AtomicInteger left = new AtomicInteger(looks);
    return () -> left.getAndDecrement() > 0;
  }

  @ParameterizedTest
  @ValueSource(strings = {"cable-overloaded", "heat-beyond-rating"})
  void whereTimeEndsTheBestSoFarIsThere(String plan) throws IOException {
    Found whole = found(plan, 14);
    assertFalse(whole.search().cutShort());
    for (int looks : List.of(0, 1, whole.changes() / 2, whole.changes(), whole.changes() + 1)) {
      Found some = found(plan, 14, lasting(looks));
      assertTrue(some.search().cutShort());
      assertTrue(some.search().reviews() <= looks + 1);
      for (RepairSearch.Tried one : some.all()) {
        assertTrue(RepairSearch.BEST.compare(whole.best(), one) <= 0);
      }
    }
    // All single changes were tried there: none of them is missing.
    Found singles = found(plan, 14, lasting(whole.changes()));
    assertEquals(
        whole.all().stream().filter(one -> one.changes().size() == 1).count(),
        singles.all().size());
    assertFalse(singles.all().isEmpty());
  }
}
