package org.footwell.vehicle.repair;

import org.footwell.calculation.Card;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Source;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.PlanReview;

/** The declaration of plan-repair. */
final class RepairCard {

  static final Card<VehiclePlan, PlanRepairResult> CARD =
      Card.of("plan-repair", VehiclePlan.class, PlanRepairResult.class)
          .title("Smallest changes that mend a plan")
          .purpose(
              "For a plan whose review warns or stops: which single changes, and which pairs of them,"
                  + " clear that, what review each leads to, what it costs in level, effort and price,"
                  + " and what it causes instead.")
          .exampleBeside(RepairCard.class)
          .sources(Source.DEFINITION, Source.COMMON_PRACTICE)
          .limits(
              "One or two changes, at most 300 single ones; pairs only of the fourteen that help most.",
              "Everything that plan-review does not model it does not mend.",
              "Efforts are common practice: a setting 1, a fuse or turned wires 2, other wiring or a"
                  + " capacitor 3, a cable 5, another part 8.",
              "Parts of the plan that are in no place are what is offered; whether one fits into its"
                  + " place is for adapter-ring.",
              "What was measured to be wrong is not mended by another plan: see fault-finder.")
          .findings(RepairFinding.values())
          .refusals(new PlanReview().card().refusals().toArray(FaultCode[]::new))
          .cautions(Safety.values())
          .build();

  private RepairCard() {}
}
