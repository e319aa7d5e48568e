package org.footwell.vehicle.questions;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.footwell.calculation.Asked;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.FilterFault;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanFigures;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.questions.PlanQuestionsResult.Question;
import org.footwell.vehicle.reading.OperatingFigures;
import org.footwell.vehicle.reading.PlaysPlan;

/** All questions that can be put to a plan as it stands, each with its address. */
public final class PlanQuestions
    implements Calculation<VehiclePlan, PlanQuestionsResult>, PlaysPlan {

  private static final Formula.Of2 ANSWERABLE =
      Formula.of("answerable_share", "a/n", "", Source.DEFINITION)
          .with("a", "n", (answerable, all) -> answerable / all);

  private static final Card<VehiclePlan, PlanQuestionsResult> CARD =
      Card.of("plan-questions", VehiclePlan.class, PlanQuestionsResult.class)
          .title("Questions a plan poses")
          .purpose(
              "Which single questions can be put to a vehicle plan as it stands, at which address"
                  + " each is answered, and what the plan still lacks for it.")
          .example(DemoPlan.json())
          .sources(Source.DEFINITION)
          .limits(
              "A question counts as answerable where the plan has what the calculation cannot do"
                  + " without; values that contradict each other are told when it is asked.",
              "Figures that follow from the plan as a whole, such as a clean power, are those of its"
                  + " review while cruising.")
          .refusals(FilterFault.and(PlanDocument.faults()))
          .build();

  private final Supplier<List<Calculation<?, ?>>> calculations;

  /** Of these calculations, which are made when first asked for. */
  public PlanQuestions(Supplier<List<Calculation<?, ?>>> calculations) {
    this.calculations = calculations;
  }

  @Override
  public Card<VehiclePlan, PlanQuestionsResult> card() {
    return CARD;
  }

  @Override
  public PlanQuestionsResult compute(VehiclePlan plan, Run run) {
    PlanIndex index = PlanIndex.of(plan, run);
    PlanFigures figures = new OperatingFigures(index, run);
    List<Question> questions = new ArrayList<>();
    for (Calculation<?, ?> calculation : calculations.get()) {
      add(calculation, index, figures, run, questions);
    }
    int answerable = (int) questions.stream().filter(Question::answerable).count();
    return new PlanQuestionsResult(
        questions.size(),
        answerable,
        run.apply(ANSWERABLE, answerable, questions.size()),
        questions);
  }

  @SuppressWarnings("unchecked") // a calculation declares how its own request is read
  private static <Q extends Record> void add(
      Calculation<Q, ?> calculation,
      PlanIndex index,
      PlanFigures figures,
      Run run,
      List<Question> into) {
    if (!(calculation instanceof AskOfPlan<?>)) {
      return;
    }
    AskOfPlan<Q> ask = (AskOfPlan<Q>) calculation;
    for (PlanPlace.Place place : PlanPlace.in(index.plan(), ask.places())) {
      run.checkDeadline();
      Asked<Q> asked = PlanDocument.ask(ask, index, figures, place);
      if (asked.posed()) {
        List<String> missing = run.missing(calculation, asked);
        into.add(
            new Question(
                calculation.card().id(),
                calculation.card().title(),
                place.address(),
                address(calculation.card().id(), place.address()),
                missing.isEmpty(),
                missing));
      }
    }
  }

  private static String address(String calculation, String about) {
    String path = "/v1/" + calculation + "/of-plan";
    String escaped = URLEncoder.encode(about, StandardCharsets.UTF_8).replace("%2F", "/");
    return about.isEmpty() ? path : path + "?about=" + escaped;
  }
}
