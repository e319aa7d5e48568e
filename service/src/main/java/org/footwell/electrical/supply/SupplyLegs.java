package org.footwell.electrical.supply;

import org.footwell.calculation.Arithmetic;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;
import org.footwell.parts.ReturnPath;
import org.footwell.physics.Conductors;
import org.footwell.physics.ConstantPower;

/** Reads the cables of a request, which want a size or have one to be checked. */
final class SupplyLegs {

  private SupplyLegs() {}

  /**
   * The main cable.
   *
   * @param branchCurrent current of all branches, or null where it has none
   */
  static Leg main(
      SupplyCableRequest q,
      LaidCable cable,
      Double branchCurrent,
      Loudest loudest,
      Arithmetic arithmetic) {
    double fixed = q.contactsOhm() + (q.bodyOhm() == null ? 0 : q.bodyOhm());
    return LegBuilder.builder()
        .pointer("")
        .startV(q.supplyV())
        .currentA(branchCurrent == null ? q.currentA() : branchCurrent)
        .inputW(inputW(q.constantPower(), arithmetic))
        .conductorM(conductorM(cable.oneWayM(), q.returnPath(), arithmetic))
        .fixedOhm(fixed)
        .permittedDropV(q.permittedDropV())
        .loudest(loudest)
        .cable(cable)
        .surroundings(surroundings(cable, arithmetic))
        .fusing(fusing(q))
        .build();
  }

  /**
   * A branch.
   *
   * @param startV at its start with the permitted drop in the main cable, V
   */
  static Leg branch(
      SupplyCableRequest q, int index, LaidCable main, double startV, Arithmetic arithmetic) {
    Branch branch = q.branches().get(index);
    LaidCable cable = main.branch(branch.cable());
    return LegBuilder.builder()
        .pointer("/branches/" + index)
        .startV(startV)
        .currentA(branch.currentA())
        .inputW(inputW(branch.constantPower(), arithmetic))
        .conductorM(conductorM(cable.oneWayM(), q.returnPath(), arithmetic))
        .fixedOhm(0)
        .permittedDropV(branch.permittedDropV())
        .loudest(Loudest.of(branch.amplifierFuseA(), branch.fullSineA(), branch.sustainedBass()))
        .cable(cable)
        .surroundings(surroundings(cable, arithmetic))
        .fusing(fusing(q))
        .build();
  }

  private static Leg.Fusing fusing(SupplyCableRequest q) {
    return new Leg.Fusing(q.fuseLoading(), q.fuseHeatFactor());
  }

  private static Double inputW(SupplyCableRequest.ConstantPower power, Arithmetic arithmetic) {
    return power == null
        ? null
        : arithmetic.apply(ConstantPower.INPUT, power.outputW(), power.efficiency());
  }

  private static double conductorM(double oneWayM, ReturnPath returnPath, Arithmetic arithmetic) {
    return returnPath == ReturnPath.CABLE
        ? arithmetic.apply(Conductors.LOOP_LENGTH, oneWayM)
        : oneWayM;
  }

  private static double surroundings(LaidCable cable, Arithmetic arithmetic) {
    return cable.engineSpace()
        ? arithmetic.apply(Ampacity.ENGINE_SPACE_FACTOR, cable.insulationC())
        : 1;
  }
}
