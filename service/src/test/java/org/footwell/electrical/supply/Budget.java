package org.footwell.electrical.supply;

import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.parts.AlternatorBuilder;
import org.footwell.parts.BatteryBuilder;
import org.footwell.parts.ConsumersBuilder;

/**
 * A request to be changed, with round numbers: a regulated amplifier draws 200 W, always, through
 * 0.1 ohm of battery and cable from a battery resting at 12 V: 20 A.
 */
final class Budget {
  final AlternatorBuilder alternator =
      AlternatorBuilder.builder().idleA(60.0).cruiseA(120.0).voltageV(14.0);
  final ConsumersBuilder consumers =
      ConsumersBuilder.builder().runningA(40.0).engineOffA(0.0).standbyMa(47.0);
  final BatteryBuilder battery =
      BatteryBuilder.builder()
          .capacityAh(100.0)
          .peukertExponent(1.2)
          .restingV(12.0)
          .internalOhm(0.09);
  final SupplyBudgetRequestSoundSystemBuilder system =
      SupplyBudgetRequestSoundSystemBuilder.builder()
          .cleanPowerW(200.0)
          .supplyV(14.0)
          .supplyRegulated(true)
          .fullEfficiency(1.0)
          .averageEfficiency(1.0)
          .levelDb(0.0)
          .crestFactorDb(3.01)
          .supplyCableOhm(0.01);
  final SupplyBudgetRequestBuilder use = SupplyBudgetRequestBuilder.builder().depth(0.5);

  SupplyBudgetRequest request() {
    return use.alternator(alternator.build())
        .consumers(consumers.build())
        .battery(battery.build())
        .system(system.build())
        .build();
  }

  Answer<SupplyBudgetResult> answer() {
    return Answers.of(new SupplyBudget(), request());
  }

  SupplyBudgetResult result() {
    return answer().result();
  }
}
