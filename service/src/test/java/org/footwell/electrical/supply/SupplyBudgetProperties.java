package org.footwell.electrical.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.electrical.supply.SupplyBudgetResult.SupplyState;
import org.footwell.physics.ConstantPower;

class SupplyBudgetProperties {

  private static Budget draft(double watts, double crest) {
    Budget budget = new Budget();
    budget.battery.internalOhm(0.01);
    budget.system.cleanPowerW(watts).crestFactorDb(crest);
    return budget;
  }

  @Property
  void powerIsConservedWithTheEngineOff(
      @ForAll @DoubleRange(min = 10, max = 1500) double watts,
      @ForAll @DoubleRange(min = 3.02, max = 20) double crest) {
    SupplyBudgetResult result = draft(watts, crest).result();
    SupplyState off = result.engineOff();
    assertEquals(
        result.averageInputW(),
        off.averageCurrentA() * off.averageAmplifierV(),
        1e-9 * result.averageInputW());
    assertEquals(
        result.peakInputW(), off.peakCurrentA() * off.peakAmplifierV(), 1e-9 * result.peakInputW());
  }

  @Property
  void theAverageIsNeverAboveThePeak(
      @ForAll @DoubleRange(min = 10, max = 1500) double watts,
      @ForAll @DoubleRange(min = 3.01, max = 20) double crest,
      @ForAll @DoubleRange(min = -40, max = 0) double level) {
    Budget budget = draft(watts, crest);
    budget.system.levelDb(level);
    SupplyBudgetResult result = budget.result();
    assertTrue(result.averageOutputW() <= result.peakOutputW());
    assertTrue(result.peakOutputW() <= watts);
  }

  @Property
  void deeperOrLargerNeverLastsShorter(
      @ForAll @DoubleRange(min = 10, max = 500) double watts,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double depth,
      @ForAll @DoubleRange(min = 20, max = 200) double capacity,
      @ForAll @DoubleRange(min = 1, max = 1.4) double exponent) {
    Budget budget = draft(watts, 12);
    budget.use.depth(depth);
    budget.battery.capacityAh(capacity).peukertExponent(exponent);
    double minutes = budget.result().listeningMin();
    budget.use.depth(depth + 0.1);
    assertTrue(budget.result().listeningMin() > minutes);
    budget.use.depth(depth);
    budget.battery.capacityAh(capacity * 1.1);
    assertTrue(budget.result().listeningMin() > minutes);
    budget.battery.capacityAh(capacity).peukertExponent(exponent + 0.1);
    assertTrue(budget.result().listeningMin() <= minutes * (1 + 1e-12));
  }

  @Property
  void theExponentOfTheReserveGivesTheReserveBack(
      @ForAll @DoubleRange(min = 30, max = 200) double capacity,
      @ForAll @DoubleRange(min = 1.01, max = 1.5) double exponent) {
    double minutes = 60 * Discharge.HOURS.at(capacity, 25, exponent);
    assertEquals(exponent, Discharge.EXPONENT.at(capacity, minutes), 1e-9);
  }

  @Property
  void twiceTheVoltageIsFourTimesThePowerThatPasses(
      @ForAll @DoubleRange(min = 6, max = 30) double volts,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double ohm) {
    assertEquals(
        4, ConstantPower.LARGEST.at(2 * volts, ohm) / ConstantPower.LARGEST.at(volts, ohm), 1e-12);
    double limit = ConstantPower.LARGEST.at(volts, ohm);
    assertTrue(Double.isNaN(ConstantPower.CURRENT.at(limit * 1.001, volts, ohm)));
    assertEquals(
        volts / (2 * ohm),
        ConstantPower.CURRENT.at(limit * (1 - 1e-12), volts, ohm),
        1e-4 * volts / ohm);
  }
}
