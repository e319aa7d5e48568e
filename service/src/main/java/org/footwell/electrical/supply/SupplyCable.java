package org.footwell.electrical.supply;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.supply.SupplyCableResult.SizedBranch;
import org.footwell.parts.ConductorFault;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.Conductors;
import org.footwell.physics.ConstantPower;
import org.footwell.physics.FuseRatings;

/** The smallest supply cable that does, and the fuses that protect it. */
public final class SupplyCable
    implements Calculation<SupplyCableRequest, SupplyCableResult>, AskOfPlan<SupplyCableRequest> {

  static final Formula.Of2 LOWEST_START =
      Formula.of("branch_start_v", "U − Ud", "V", ConstantPower.KIRCHHOFF)
          .with("U", "Ud", (u, drop) -> u - drop);
  private static final Formula.Of2 SUM =
      Formula.of("main_current_a", "I1 + I2", "A", ConstantPower.KIRCHHOFF)
          .with("I1", "I2", Double::sum);

  private static final Card<SupplyCableRequest, SupplyCableResult> CARD =
      Card.of("supply-cable", SupplyCableRequest.class, SupplyCableResult.class)
          .title("Supply cable and fuses")
          .purpose(
              "Which is the smallest standard cable, in mm² and in American wire gauge, that"
                  + " carries a current within a permitted drop; what it drops and loses; which"
                  + " fuses protect it, or that none fits.")
          .example(
              """
              {"supply_v": 13.8,
               "cable": {"one_way_m": 5, "material": "copper", "insulation_temperature_c": 105,
                         "engine_space": true},
               "return_path": "body", "body_ohm": 0.001,
               "permitted_drop_v": 0.5, "fuse_distance_m": 0.3,
               "branches": [
                 {"name": "bass amplifier", "constant_power": {"output_w": 500, "efficiency": 0.8},
                  "cable": {"one_way_m": 0.6}, "permitted_drop_v": 0.1},
                 {"name": "front amplifier", "current_a": 22, "cable": {"one_way_m": 0.8},
                  "permitted_drop_v": 0.1}]}
              """)
          .sources(
              Ampacity.CFR_33_183_425,
              Conductors.IEC_60228,
              Conductors.IEC_60028,
              Gauge.ASTM_B258,
              FuseRatings.ISO_8820,
              ConstantPower.KIRCHHOFF,
              ConstantPower.MATCHED_LOAD,
              Source.COMMON_PRACTICE)
          .limits(
              "The ampacity is that of a law for boats, one conductor at 30 °C or in an engine"
                  + " space; for a road vehicle its maker's instructions and local rules come"
                  + " first. Cables in a bundle or under carpet carry less.",
              "A metric size carries what the next smaller gauge of the table does; sizes above"
                  + " No. 0000 count as No. 0000. Nothing thinner than No. 16 is offered.",
              "Gauges are counted with the resistance of class 5 at their area, 10.6 to 15.7 %"
                  + " above solid copper: vehicle cable sold by gauge often has that much less metal.",
              "Copper-clad aluminium is not in the table: its ampacity is scaled to the same heat.",
              "The current is one that flows for minutes; music peaks drop more for a moment.",
              "Opening times are those of blade fuses of type C, from memory; others are not judged by"
                  + " them.")
          .findings(CableFinding.values())
          .refusals(ConductorFault.and(CableFault.values()))
          .cautions(Safety.FIRE, Safety.BATTERY, Safety.AIRBAG)
          .build();

  @Override
  public Card<SupplyCableRequest, SupplyCableResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.AMPLIFIER);
  }

  @Override
  public SupplyCableRequest ask(PlanReader plan) {
    return new CableOfPlan(plan).request();
  }

  @Override
  public SupplyCableResult compute(SupplyCableRequest q, Run run) {
    LaidCable cable = LaidCable.main(q.cable());
    List<SizedBranch> branches = new ArrayList<>();
    List<Leg> legs = new ArrayList<>();
    Double branchCurrent = null;
    Loudest loudest = Loudest.of(q.amplifierFuseA(), q.fullSineA(), q.sustainedBass());
    if (q.branches() != null) {
      double start = run.apply(LOWEST_START, q.supplyV(), q.permittedDropV());
      branchCurrent = 0.0;
      List<Double> currents = new ArrayList<>();
      for (int i = 0; i < q.branches().size(); i++) {
        Leg leg = SupplyLegs.branch(q, i, cable, start, run);
        currents.add(leg.worstCurrent(run));
        branchCurrent = run.apply(SUM, branchCurrent, currents.get(i));
        legs.add(leg);
        branches.add(branch(q.branches().get(i).name(), leg, run));
      }
      loudest = Loudest.together(legs.stream().map(Leg::loudest).toList(), currents);
    }
    Leg main = SupplyLegs.main(q, cable, branchCurrent, loudest, run);
    Sizing.Found found = sized(main, run);
    CableRules.find(q, found, branches, run);
    FuseRules.find(main, found.either(), run);
    for (int i = 0; i < legs.size(); i++) {
      SizedBranch branch = branches.get(i);
      FuseRules.find(legs.get(i), new Sizing.Found(branch.metric(), branch.gauge()).either(), run);
    }
    return new SupplyCableResult(
        found.metric(),
        found.gauge(),
        q.fuseDistanceLimitM(),
        q.branches() == null ? null : branches);
  }

  private static SizedBranch branch(String name, Leg leg, Run run) {
    Sizing.Found found = sized(leg, run);
    return new SizedBranch(name, leg.startV(), found.metric(), found.gauge());
  }

  private static Sizing.Found sized(Leg leg, Run run) {
    Double areaMm2 = leg.cable().areaMm2();
    return areaMm2 == null ? Sizing.smallest(leg, run) : given(areaMm2, leg, run);
  }

  /** The size to be checked, as it is. */
  private static Sizing.Found given(double areaMm2, Leg leg, Run run) {
    Sizing.judge(leg, areaMm2, run);
    return new Sizing.Found(leg.sized(areaMm2, null, null, run), null);
  }
}
