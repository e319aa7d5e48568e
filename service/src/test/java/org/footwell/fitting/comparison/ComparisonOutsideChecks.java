package org.footwell.fitting.comparison;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.footwell.fitting.comparison.sides.ComparedSide;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;
import org.footwell.physics.Piston;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class ComparisonOutsideChecks extends OutsideChecks {

  private static final double DENSITY = 1.2041;

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        check("one_watt_level_db_spl", "one_watt_db", ComparedSide::oneWattLevelDbSpl).within(1e-5),
        check(
                "two_point_eight_three_volt_level_db_spl",
                "voltage_db",
                ComparedSide::twoPointEightThreeVoltLevelDbSpl)
            .within(1e-5),
        check("thermal_level_db_spl", "thermal_db", ComparedSide::thermalLevelDbSpl).within(1e-5),
        check("displacement_level_db_spl", "displacement_db", ComparedSide::displacementLevelDbSpl)
            .within(1e-5),
        check("amplifier_level_db_spl", "amplifier_db", ComparedSide::amplifierLevelDbSpl)
            .within(1e-5),
        check("largest_level_db_spl", "largest_db", ComparedSide::largestLevelDbSpl).within(1e-5),
        OutsideCheck.of(
                "driver-comparison", "limited_by, its place among the three", "driver-levels.csv")
            .printed(row -> placeOf(row.text("limited_by")))
            .computed(row -> placeOf(side(row).limitedBy().name().toLowerCase(Locale.ROOT)))
            .within(0),
        check("displacement_limited_below_hz", "below_hz", ComparedSide::displacementLimitedBelowHz)
            .withinRelative(1e-6),
        OutsideCheck.of("driver-comparison", "frequency_hz of the reach", "driver-levels.csv")
            .printed("reach_hz")
            .computed(
                row ->
                    Piston.FREQUENCY_OF_DISPLACEMENT.at(
                        row.number("sd_cm2"),
                        row.number("xmax_mm"),
                        row.number("reach_db"),
                        DENSITY))
            .withinRelative(1e-6));
  }

  private static OutsideCheck check(
      String quantity, String column, Function<ComparedSide, Double> of) {
    return OutsideCheck.of("driver-comparison", quantity, "driver-levels.csv")
        .printed(column)
        .computed(row -> of.apply(side(row)));
  }

  private static int placeOf(String limit) {
    return List.of("thermal", "displacement", "amplifier").indexOf(limit);
  }

  private static ComparedSide side(Row row) {
    PositionDraft position = new PositionDraft();
    position.factory = null;
    position
        .place
        .amplifierBefore(null)
        .amplifierAfter(PositionDraft.volts(row.number("clean_v")).build())
        .displacementHz(row.number("displacement_hz"))
        .reachLevelDbSpl(row.number("reach_db"));
    DriverBuilder driver = position.replacement;
    driver
        .ratedOhm(row.number("rated_ohm"))
        .sensitivity(
            new Sensitivity(
                row.number("stated_db"),
                row.text("basis").equals("one_watt")
                    ? Basis.ONE_WATT
                    : Basis.TWO_POINT_EIGHT_THREE_VOLT))
        .continuousPowerW(row.number("continuous_w"))
        .sdCm2(row.number("sd_cm2"))
        .xmaxMm(row.number("xmax_mm"));
    return ComparisonDraft.of(position).line(0).after();
  }
}
