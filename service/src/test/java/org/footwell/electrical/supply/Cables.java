package org.footwell.electrical.supply;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;
import org.footwell.electrical.supply.SupplyCableRequest.ConstantPower;
import org.footwell.parts.Cable;
import org.footwell.parts.CableBuilder;
import org.footwell.parts.ConductorMaterial;
import org.footwell.parts.ReturnPath;

/** Cables to be sized, and what is answered. */
final class Cables {

  private Cables() {}

  /** 40 A from 13.8 V over 5 m of copper, the body returning, 0.5 V. */
  static CableDraft standard() {
    return unloaded().currentA(40.0);
  }

  /** A load of constant power instead of the current. */
  static CableDraft power(double outputW, double efficiency) {
    CableDraft draft = unloaded();
    draft.use.constantPower(new ConstantPower(outputW, efficiency));
    return draft;
  }

  /** Branches instead of the current. */
  static CableDraft branched(Branch... all) {
    return unloaded().branches(List.of(all));
  }

  private static CableDraft unloaded() {
    return new CableDraft()
        .supplyV(13.8)
        .oneWayM(5.0)
        .returnPath(ReturnPath.BODY)
        .permittedDropV(0.5)
        .material(ConductorMaterial.COPPER)
        .insulationTemperatureC(105.0)
        .engineSpace(true);
  }

  /** A branch of which only the length is said. */
  static Cable metres(double oneWayM) {
    return CableBuilder.builder().oneWayM(oneWayM).build();
  }

  static Branch branch(String name, double currentA, double permittedDropV) {
    return SupplyCableRequestBranchBuilder.builder()
        .name(name)
        .currentA(currentA)
        .cable(metres(1))
        .permittedDropV(permittedDropV)
        .build();
  }

  static Answer<SupplyCableResult> answer(CableDraft cable) {
    return Answers.of(new SupplyCable(), cable.build());
  }

  static SupplyCableResult result(CableDraft cable) {
    return answer(cable).result();
  }
}
