package org.footwell.electrical.supply;

import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.electrical.supply.SupplyBudgetRequest.Alternator;
import org.footwell.electrical.supply.SupplyBudgetRequest.Battery;
import org.footwell.electrical.supply.SupplyBudgetRequest.Consumers;

/**
 * A request to be changed, with round numbers: a regulated amplifier draws 200 W, always, through
 * 0.1 ohm of battery and cable from a battery resting at 12 V: 20 A.
 */
final class BudgetDraft {
  double alternatorIdleA = 60;
  double cruiseA = 120;
  double voltageV = 14;
  Double lowV;
  double runningA = 40;
  double engineOffA = 0;
  double standbyMa = 47;
  double capacityAh = 100;
  Double peukertExponent = 1.2;
  Double reserveMin;
  Double charge;
  double restingV = 12;
  double internalOhm = 0.09;
  Double startCharge;
  Double selfDischarge;
  double cleanPowerW = 200;
  double atV = 14;
  boolean regulated = true;
  double fullEfficiency = 1;
  double averageEfficiency = 1;
  Double idleA;
  double levelDb = 0;
  double crestFactorDb = 3.01;
  double cableOhm = 0.01;
  Double minimumV;
  double depth = 0.5;
  Double idleShare;
  Double crankingV;

  void cranking(double volts, double minimum) {
    crankingV = volts;
    minimumV = minimum;
  }

  SupplyBudgetRequest request() {
    return new SupplyBudgetRequest(
        new Alternator(alternatorIdleA, cruiseA, voltageV, lowV),
        new Consumers(runningA, engineOffA, standbyMa),
        new Battery(
            capacityAh,
            peukertExponent,
            reserveMin,
            charge,
            restingV,
            internalOhm,
            startCharge,
            selfDischarge),
        SupplyBudgetRequestSoundSystemBuilder.builder()
            .cleanPowerW(cleanPowerW)
            .atV(atV)
            .regulated(regulated)
            .fullEfficiency(fullEfficiency)
            .averageEfficiency(averageEfficiency)
            .idleA(idleA)
            .levelDb(levelDb)
            .crestFactorDb(crestFactorDb)
            .cableOhm(cableOhm)
            .minimumV(minimumV)
            .build(),
        depth,
        idleShare,
        crankingV);
  }

  Answer<SupplyBudgetResult> answer() {
    return Answers.of(new SupplyBudget(), request());
  }

  SupplyBudgetResult result() {
    return answer().result();
  }
}
