package org.footwell.electrical.supply;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.physics.ConstantPower;

/** What is drawn passes what is in its way. */
@Check.Of(
    value = {
      "supply_v",
      "permitted_drop_v",
      "current_a",
      "constant_power",
      "branches",
      "return_path",
      "contacts_ohm",
      "body_ohm",
      "cable"
    },
    says =
        "Where a size is looked for, contacts_ohm and body_ohm lose no more than permitted_drop_v;"
            + " where it is given, its cable with them lets the power pass and loses less than the"
            + " voltage at its start.")
final class PowerPasses implements Check<SupplyCableRequest> {

  @Override
  public void check(SupplyCableRequest q, Refusing to) {
    if (!DropWithinSupply.possible(q) || !loaded(q)) {
      return; // told by others
    }
    LaidCable cable = LaidCable.main(q.cable());
    double start = SupplyCable.LOWEST_START.at(q.supplyV(), q.permittedDropV());
    double together = 0;
    for (int i = 0; q.branches() != null && i < q.branches().size(); i++) {
      Leg leg = SupplyLegs.branch(q, i, cable, start, Arithmetic.SILENT);
      together += leg.worstCurrent(Arithmetic.SILENT);
      given(leg, to);
    }
    Double branches = q.branches() == null ? null : (Double) together;
    Loudest loudest = Loudest.of(q.amplifierFuseA(), q.fullSineA(), q.sustainedBass());
    Leg main = SupplyLegs.main(q, cable, branches, loudest, Arithmetic.SILENT);
    if (cable.areaMm2() == null && main.dropsTooMuch(main.fixedOhm())) {
      to.refuse(CableFault.FIXED_RESISTANCE_TOO_HIGH)
          .at(q.bodyOhm() == null ? "/contacts_ohm" : "/body_ohm")
          .given(main.fixedOhm())
          .with("drop", main.permittedDropV());
    }
    given(main, to);
  }

  /** Whether it is clear what each cable carries. */
  private static boolean loaded(SupplyCableRequest q) {
    return q.branches() == null
        ? one(q.currentA(), q.constantPower())
        : q.currentA() == null
            && q.constantPower() == null
            && q.branches().stream().allMatch(b -> one(b.currentA(), b.constantPower()));
  }

  private static boolean one(Object current, Object power) {
    return (current == null) != (power == null);
  }

  /** The size to be checked must be one of which something can be said. */
  private static void given(Leg leg, Refusing to) {
    Double areaMm2 = leg.cable().areaMm2();
    if (areaMm2 == null) {
      return;
    }
    double loop = leg.loopOhm(areaMm2);
    double current = leg.current(loop);
    String at = leg.pointer() + "/cable/area_mm2";
    if (Double.isNaN(current)) {
      to.refuse(CableFault.POWER_CANNOT_PASS)
          .at(at)
          .given(areaMm2)
          .with("power", leg.inputW())
          .with("loop", loop)
          .with("supply", leg.startV())
          .limit(ConstantPower.LARGEST.at(leg.startV(), loop));
    } else if (current * loop >= leg.startV()) {
      to.refuse(CableFault.DROP_ABOVE_SUPPLY)
          .at(at)
          .given(areaMm2)
          .with("drop", current * loop)
          .with("supply", leg.startV());
    }
  }
}
