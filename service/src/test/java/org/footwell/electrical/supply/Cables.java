package org.footwell.electrical.supply;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;
import org.footwell.electrical.supply.SupplyCableRequest.ConstantPower;
import org.footwell.electrical.supply.SupplyCableRequest.Material;
import org.footwell.electrical.supply.SupplyCableRequest.ReturnPath;

/** Cables to be sized, and what is answered. */
final class Cables {

  private Cables() {}

  /** 40 A from 13.8 V over 5 m of copper, the body returning, 0.5 V. */
  static SupplyCableRequestBuilder standard() {
    return unloaded().currentA(40.0);
  }

  /** A load of constant power instead of the current. */
  static SupplyCableRequestBuilder power(double outputW, double efficiency) {
    return unloaded().constantPower(new ConstantPower(outputW, efficiency));
  }

  /** Branches instead of the current. */
  static SupplyCableRequestBuilder branched(Branch... all) {
    return unloaded().branches(List.of(all));
  }

  private static SupplyCableRequestBuilder unloaded() {
    return SupplyCableRequestBuilder.builder()
        .supplyV(13.8)
        .oneWayM(5.0)
        .returnPath(ReturnPath.BODY)
        .permittedDropV(0.5)
        .material(Material.COPPER)
        .insulationTemperatureC(105.0)
        .engineSpace(true);
  }

  static Branch branch(String name, double currentA, double permittedDropV) {
    return SupplyCableRequestBranchBuilder.builder()
        .name(name)
        .currentA(currentA)
        .oneWayM(1.0)
        .permittedDropV(permittedDropV)
        .build();
  }

  static Answer<SupplyCableResult> answer(SupplyCableRequestBuilder cable) {
    return Answers.of(new SupplyCable(), cable.build());
  }

  static SupplyCableResult result(SupplyCableRequestBuilder cable) {
    return answer(cable).result();
  }
}
