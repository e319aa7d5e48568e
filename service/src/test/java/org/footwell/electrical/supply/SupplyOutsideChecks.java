package org.footwell.electrical.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.footwell.Answers;
import org.footwell.electrical.supply.SupplyCableResult.SizedCable;
import org.footwell.physics.ConstantPower;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class SupplyOutsideChecks extends OutsideChecks {

  /** Rows, by reserve minutes and capacity, whose printed exponent is not that of their ratings. */
  private static final Set<String> CONTRADICTORY_ROWS = Set.of("140/43", "605/305", "160/105");

  @Override
  public List<OutsideCheck> checks() {
    List<OutsideCheck> checks = new ArrayList<>();
    for (int rating : new int[] {60, 75, 80, 90, 105, 125, 200}) {
      checks.add(
          OutsideCheck.of(
                  "supply-cable",
                  "ampacity at " + rating + " °C insulation, A",
                  "33-cfr-183-425-table-5.csv")
              .printed("c" + rating + "_a")
              .computed(row -> Ampacity.TABLE.at(row.number("area_mm2"), rating))
              .within(0));
    }
    checks.add(
        OutsideCheck.of(
                "supply-cable", "ampacity_a in an engine space", "boat-cable-engine-space.csv")
            .rows(row -> !row.text("awg").equals("18"))
            .printed("engine_space_a")
            .computed(SupplyOutsideChecks::inEngineSpace)
            .within(0.051));
    checks.add(
        OutsideCheck.of("supply-cable", "engine_space_factor", "ambient-50-c-factors.csv")
            .printed("factor")
            .computed(row -> Ampacity.ENGINE_SPACE_FACTOR.at(row.number("rating_c")))
            .within(0));
    checks.add(
        OutsideCheck.of("supply-cable", "gauge diameter, mm", "awg-sizes.csv")
            .printed("diameter_mm")
            .computed(row -> Gauge.DIAMETER.at(row.number("gauge_number")))
            .within(0.00051));
    checks.add(
        OutsideCheck.of("supply-cable", "gauge area, mm²", "awg-sizes.csv")
            .printed("area_mm2")
            .computed(row -> Gauge.areaMm2((int) row.number("gauge_number")))
            .withinRelative(0.005));
    checks.add(
        OutsideCheck.of("supply-cable", "cable_ohm of 1 km at 20 °C", "iec-60228-class-5.csv")
            .rows(row -> row.number("area_mm2") >= 1.5)
            .printed("resistance_ohm_per_km")
            .computed(SupplyOutsideChecks::ohmPerKm)
            .withinRelative(1e-9));
    checks.add(
        OutsideCheck.of("supply-cable", "current_a at constant power", "maximum-power-by-hand.csv")
            .printed("current_a")
            .computed(
                row ->
                    ConstantPower.CURRENT.at(
                        row.number("power_w"), row.number("supply_v"), row.number("loop_ohm")))
            .withinRelative(1e-7));
    checks.add(
        OutsideCheck.of("supply-cable", "largest_w", "maximum-power-by-hand.csv")
            .printed("largest_w")
            .computed(
                row -> ConstantPower.LARGEST.at(row.number("supply_v"), row.number("loop_ohm")))
            .withinRelative(1e-12));
    checks.add(
        OutsideCheck.of("supply-budget", "peukert_exponent", "peukert-from-reserve.csv")
            .rows(
                row ->
                    !CONTRADICTORY_ROWS.contains(
                        row.text("reserve_min") + "/" + row.text("capacity_ah")))
            .printed("exponent")
            .computed(
                row -> Discharge.EXPONENT.at(row.number("capacity_ah"), row.number("reserve_min")))
            .within(0.0051));
    return checks;
  }

  private static double inEngineSpace(Row row) {
    return check(row.number("area_mm2"), 105, true).ampacityA();
  }

  /** The longest cable a request may have, at 20 °C, back to one kilometre. */
  private static double ohmPerKm(Row row) {
    return check(row.number("area_mm2"), 60, false).cableOhm() * 20;
  }

  private static SizedCable check(double areaMm2, double insulationC, boolean engineSpace) {
    CableDraft draft =
        Cables.standard()
            .currentA(0.1)
            .oneWayM(50.0)
            .conductorTemperatureC(20.0)
            .areaMm2(areaMm2)
            .insulationTemperatureC(insulationC)
            .engineSpace(engineSpace);
    return Answers.of(new SupplyCable(), draft.build()).result().metric();
  }
}
