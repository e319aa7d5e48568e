package org.footwell.electrical.supply;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;
import org.footwell.electrical.supply.SupplyCableRequest.ConstantPower;
import org.footwell.electrical.supply.SupplyCableRequest.FedAmplifier;
import org.footwell.electrical.supply.SupplyCableRequest.Material;
import org.footwell.electrical.supply.SupplyCableRequest.ReturnPath;

/** A request to be changed: 40 A from 13.8 V over 5 m of copper, the body returning, 0.5 V. */
final class CableDraft {
  Double supplyV = 13.8;
  Double currentA = 40.0;
  ConstantPower constantPower;
  Double oneWayM = 5.0;
  ReturnPath returnPath = ReturnPath.BODY;
  Double bodyOhm;
  Double contactsOhm;
  Double permittedDropV = 0.5;
  Material material = Material.COPPER;
  Double conductivity;
  Double conductorTemperatureC;
  Double insulationTemperatureC = 105.0;
  Boolean engineSpace = true;
  Double areaMm2;
  Double fuseDistanceM;
  Double fuseDistanceLimitM;
  Double fuseLoading;
  Double fuseHeatFactor;
  FedAmplifier amplifier;
  List<Branch> branches;

  /** Instead of a current. */
  CableDraft power(double outputW, double efficiency) {
    currentA = null;
    constantPower = new ConstantPower(outputW, efficiency);
    return this;
  }

  /** Instead of a current. */
  CableDraft branches(Branch... all) {
    currentA = null;
    branches = List.of(all);
    return this;
  }

  static Branch branch(String name, double currentA, double permittedDropV) {
    return new Branch(name, currentA, null, 1.0, permittedDropV, null, null, null);
  }

  SupplyCableRequest request() {
    return SupplyCableRequestBuilder.builder()
        .supplyV(supplyV)
        .currentA(currentA)
        .constantPower(constantPower)
        .oneWayM(oneWayM)
        .returnPath(returnPath)
        .bodyOhm(bodyOhm)
        .contactsOhm(contactsOhm)
        .permittedDropV(permittedDropV)
        .material(material)
        .conductivity(conductivity)
        .conductorTemperatureC(conductorTemperatureC)
        .insulationTemperatureC(insulationTemperatureC)
        .engineSpace(engineSpace)
        .areaMm2(areaMm2)
        .fuseDistanceM(fuseDistanceM)
        .fuseDistanceLimitM(fuseDistanceLimitM)
        .fuseLoading(fuseLoading)
        .fuseHeatFactor(fuseHeatFactor)
        .amplifier(amplifier)
        .branches(branches)
        .build();
  }

  Answer<SupplyCableResult> answer() {
    return Answers.of(new SupplyCable(), request());
  }

  SupplyCableResult result() {
    return answer().result();
  }
}
