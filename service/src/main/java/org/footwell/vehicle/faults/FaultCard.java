package org.footwell.vehicle.faults;

import java.util.stream.Stream;
import org.footwell.calculation.Card;
import org.footwell.calculation.Caution;
import org.footwell.calculation.Source;
import org.footwell.parts.FilterFault;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.ConstantPower;
import org.footwell.physics.ThieleSmall;
import org.footwell.vehicle.questions.PlanDocument;

/** The declaration of fault-finder. */
final class FaultCard {

  static final Card<VehiclePlan, FaultFinderResult> CARD =
      Card.of("fault-finder", VehiclePlan.class, FaultFinderResult.class)
          .title("Faults of a finished vehicle")
          .purpose(
              "What was measured in a finished vehicle is held against the plan it was built by."
                  + " Each fault that may be there is put into the model, one by one and in pairs:"
                  + " which explains the measurements best and how sure that is, what cannot be told"
                  + " apart, whether anything fits at all, and what to measure next.")
          .exampleBeside(FaultCard.class)
          .sources(
              Diagnosis.BAYES,
              Diagnosis.SEVERAL_FAULTS,
              ThieleSmall.SMALL_DRIVER,
              ConstantPower.KIRCHHOFF,
              Source.DEFINITION,
              Source.COMMON_PRACTICE)
          .limits(
              "All limits of plan-review: the model predicts cabins only within several dB. The"
                  + " errors stated must hold the model's own.",
              "Errors are taken as normal and independent of each other; a microphone that is off"
                  + " makes all levels off alike and looks like gains.",
              "Two faults at most, and pairs only of the forty single faults that fit best.",
              "A shorted coil does not brake the cone of the coil beside it.",
              "Settings are taken as made: what a fault changes in clipping or limiting does not"
                  + " count.")
          .findings(FaultFinding.values())
          .refusals(FilterFault.and(PlanDocument.faults()))
          .cautions(
              Stream.concat(Stream.of(Safety.values()), Stream.of(MeasuringCaution.values()))
                  .toArray(Caution[]::new))
          .build();

  private FaultCard() {}
}
