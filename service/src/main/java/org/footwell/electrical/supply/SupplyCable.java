package org.footwell.electrical.supply;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;
import org.footwell.electrical.supply.SupplyCableRequest.ReturnPath;
import org.footwell.electrical.supply.SupplyCableResult.SizedBranch;
import org.footwell.electrical.supply.SupplyCableResult.SizedCable;
import org.footwell.parts.Safety;
import org.footwell.physics.Conductors;

/** The smallest supply cable that does, and the fuses that protect it. */
public final class SupplyCable implements Calculation<SupplyCableRequest, SupplyCableResult> {

  private static final Formula.Of1 LOOP_LENGTH =
      Formula.of("conductor_length_m", "2·l", "m", DEFINITION).with("l", l -> 2 * l);
  private static final Formula.Of2 LOWEST_START =
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
              {"supply_v": 13.8, "one_way_m": 5, "return_path": "body", "body_ohm": 0.001,
               "permitted_drop_v": 0.5, "material": "copper", "insulation_temperature_c": 105,
               "engine_space": true, "fuse_distance_m": 0.3,
               "branches": [
                 {"name": "bass amplifier", "constant_power": {"output_w": 500, "efficiency": 0.8},
                  "one_way_m": 0.6, "permitted_drop_v": 0.1},
                 {"name": "front amplifier", "current_a": 22, "one_way_m": 0.8,
                  "permitted_drop_v": 0.1}]}
              """)
          .sources(
              Ampacity.CFR_33_183_425,
              Conductors.IEC_60228,
              Conductors.IEC_60028,
              Gauge.ASTM_B258,
              Fuse.ISO_8820,
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
          .refusals(CableFault.values())
          .cautions(Safety.FIRE, Safety.BATTERY, Safety.AIRBAG)
          .build();

  @Override
  public Card<SupplyCableRequest, SupplyCableResult> card() {
    return CARD;
  }

  @Override
  public SupplyCableResult compute(SupplyCableRequest q, Run run) {
    CableRefusals.of(q, run);
    Leg.Conditions conditions =
        new Leg.Conditions(
            q.conductivity(), q.conductorTemperatureC(), q.fuseLoading(), q.fuseHeatFactor());
    List<SizedBranch> branches = new ArrayList<>();
    List<Leg> legs = new ArrayList<>();
    Double branchCurrent = null;
    Loudest loudest = Loudest.of(q.amplifier());
    if (q.branches() != null) {
      double start = run.apply(LOWEST_START, q.supplyV(), q.permittedDropV());
      branchCurrent = 0.0;
      List<Double> currents = new ArrayList<>();
      for (int i = 0; i < q.branches().size(); i++) {
        Branch branch = q.branches().get(i);
        Leg leg = leg(branch, "/branches/" + i, start, q, conditions, run);
        currents.add(leg.worstCurrent(run));
        branchCurrent = run.apply(SUM, branchCurrent, currents.get(i));
        legs.add(leg);
        branches.add(sized(branch.name(), leg, run));
      }
      loudest = Loudest.together(legs.stream().map(Leg::loudest).toList(), currents);
    }
    Leg main = main(q, branchCurrent, loudest, conditions, run);
    Sizing.Found found = q.areaMm2() == null ? searched(q, main, run) : given(q, main, run);
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

  private static Leg main(
      SupplyCableRequest q,
      Double branchCurrent,
      Loudest loudest,
      Leg.Conditions conditions,
      Run run) {
    double fixed = q.contactsOhm() + (q.bodyOhm() == null ? 0 : q.bodyOhm());
    return LegBuilder.builder()
        .pointer("")
        .startV(q.supplyV())
        .currentA(branchCurrent == null ? q.currentA() : branchCurrent)
        .inputW(inputW(q.constantPower(), run))
        .conductorM(conductorM(q.oneWayM(), q, run))
        .fixedOhm(fixed)
        .permittedDropV(q.permittedDropV())
        .loudest(loudest)
        .insulationC(q.insulationTemperatureC())
        .surroundings(surroundings(q.engineSpace(), q.insulationTemperatureC(), run))
        .conditions(conditions)
        .build();
  }

  private static Leg leg(
      Branch branch,
      String pointer,
      double startV,
      SupplyCableRequest q,
      Leg.Conditions conditions,
      Run run) {
    double insulation =
        branch.insulationTemperatureC() == null
            ? q.insulationTemperatureC()
            : branch.insulationTemperatureC();
    return LegBuilder.builder()
        .pointer(pointer)
        .startV(startV)
        .currentA(branch.currentA())
        .inputW(inputW(branch.constantPower(), run))
        .conductorM(conductorM(branch.oneWayM(), q, run))
        .fixedOhm(0)
        .permittedDropV(branch.permittedDropV())
        .loudest(Loudest.of(branch.amplifier()))
        .insulationC(insulation)
        .surroundings(surroundings(branch.engineSpace(), insulation, run))
        .conditions(conditions)
        .build();
  }

  private static Double inputW(SupplyCableRequest.ConstantPower power, Run run) {
    return power == null
        ? null
        : run.apply(ConstantPower.INPUT, power.outputW(), power.efficiency());
  }

  private static double conductorM(double oneWayM, SupplyCableRequest q, Run run) {
    return q.returnPath() == ReturnPath.CABLE ? run.apply(LOOP_LENGTH, oneWayM) : oneWayM;
  }

  private static double surroundings(boolean engineSpace, double insulationC, Run run) {
    return engineSpace ? run.apply(Ampacity.ENGINE_SPACE_FACTOR, insulationC) : 1;
  }

  private static SizedBranch sized(String name, Leg leg, Run run) {
    Sizing.Found found = Sizing.smallest(leg, run);
    return new SizedBranch(name, leg.startV(), found.metric(), found.gauge());
  }

  private static Sizing.Found searched(SupplyCableRequest q, Leg main, Run run) {
    if (main.dropsTooMuch(main.fixedOhm())) {
      run.refuse(CableFault.FIXED_RESISTANCE_TOO_HIGH)
          .at(q.bodyOhm() == null ? "/contacts_ohm" : "/body_ohm")
          .given(main.fixedOhm())
          .with("drop", main.permittedDropV());
      throw run.refused();
    }
    return Sizing.smallest(main, run);
  }

  /** The size to be checked, as it is; refused when nothing can be said about it. */
  private static Sizing.Found given(SupplyCableRequest q, Leg main, Run run) {
    double loop = main.loopOhm(q.areaMm2());
    double current = main.current(loop);
    if (Double.isNaN(current)) {
      run.refuse(CableFault.POWER_CANNOT_PASS)
          .at("/area_mm2")
          .given(q.areaMm2())
          .with("power", main.inputW())
          .with("loop", loop)
          .with("supply", main.startV())
          .limit(run.apply(ConstantPower.LARGEST, main.startV(), loop));
      throw run.refused();
    }
    if (current * loop >= main.startV()) {
      run.refuse(CableFault.DROP_ABOVE_SUPPLY)
          .at("/area_mm2")
          .given(q.areaMm2())
          .with("drop", current * loop)
          .with("supply", main.startV());
      throw run.refused();
    }
    Sizing.judge(main, q.areaMm2(), run);
    SizedCable cable = main.sized(q.areaMm2(), null, null, run);
    return new Sizing.Found(cable, null);
  }
}
