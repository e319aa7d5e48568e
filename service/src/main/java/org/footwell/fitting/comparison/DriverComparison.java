package org.footwell.fitting.comparison;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.fitting.comparison.DriverComparisonResult.AdditionLine;
import org.footwell.fitting.comparison.DriverComparisonResult.GroupLine;
import org.footwell.fitting.comparison.DriverComparisonResult.PositionLine;
import org.footwell.fitting.comparison.DriverComparisonResult.VehicleTotals;
import org.footwell.fitting.comparison.sides.ChangeFigures;
import org.footwell.fitting.comparison.sides.ComparedAmplifier;
import org.footwell.fitting.comparison.sides.ComparedPosition;
import org.footwell.fitting.comparison.sides.ComparedSide;
import org.footwell.fitting.comparison.sides.SideFigures;
import org.footwell.fitting.comparison.sides.SideFormulas;
import org.footwell.parts.Driver;
import org.footwell.parts.MoneyFault;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.Air;
import org.footwell.physics.Piston;
import org.footwell.physics.SensitivityBases;

/** Factory parts against their replacements, position by position and for the whole vehicle. */
public final class DriverComparison
    implements Calculation<DriverComparisonRequest, DriverComparisonResult>,
        AskOfPlan<DriverComparisonRequest> {

  private static final Card<DriverComparisonRequest, DriverComparisonResult> CARD =
      Card.of("driver-comparison", DriverComparisonRequest.class, DriverComparisonResult.class)
          .title("Factory part against replacement")
          .purpose(
              "What changes with new drivers: mass, power, sensitivity, the largest clean level and"
                  + " what holds it, the lowest useful frequency, cone area, air moved, and the"
                  + " price, also for each dB; for every position and for the whole vehicle.")
          .example(
              """
              {"currency": "EUR", "positions": [
                {"name": "front doors", "zone": "front", "band": "woofer", "at": "door",
                 "driver_count": 2,
                 "factory": {"name": "factory paper cone", "rated_ohm": 4,
                   "sensitivity": {"level_db_spl": 91,
                                   "basis": "two_point_eight_three_volt"},
                   "continuous_power_w": 25, "peak_power_w": 50, "sd_cm2": 132, "xmax_mm": 2,
                   "fs_hz": 75, "mass_g": 350},
                 "replacement": {"name": "cast-frame 165", "rated_ohm": 4,
                   "sensitivity": {"level_db_spl": 88, "basis": "one_watt"},
                   "continuous_power_w": 80, "peak_power_w": 240, "sd_cm2": 137, "xmax_mm": 5,
                   "fs_hz": 58, "mass_g": 1250, "price": 64.95},
                 "amplifier_before": {"voltage_v": 8.9},
                 "amplifier_after": {"power_w": 75, "load_ohm": 4, "minimum_ohm": 2}}],
               "additions": [
                {"name": "four-channel amplifier", "at": "boot", "mass_g": 3100,
                 "price": 249.00},
                {"name": "cables and fuses", "mass_g": 1400, "price": 58.40}]}
              """)
          .sources(
              SensitivityBases.IEC_60268_5,
              Piston.HALF_SPACE,
              Air.ISO_9613_1,
              SideFormulas.SUPERPOSITION,
              Source.DEFINITION,
              Source.COMMON_PRACTICE)
          .limits(
              "Levels are of one driver at 1 m in half space; the cabin changes both parts alike.",
              "Power and sensitivity as stated: a hot voice coil loses some dB at its full power.",
              "Travel is judged for a sine at one frequency; music asks for less of it.",
              "An amplifier that stays is taken to keep its voltage into another load.",
              "Better sound is not in these figures: listen.")
          .findings(ComparisonFinding.values())
          .refusals(MoneyFault.values())
          .cautions(Safety.RESTRAINT, Safety.HEARING, Safety.AIRBAG)
          .view(
              "html",
              "text/html;charset=utf-8",
              "The comparison side by side, a page to be shown to the customer or printed",
              shown -> ComparisonSheet.page(shown).html())
          .view(
              "pdf",
              "application/pdf",
              "The same on paper",
              shown -> ComparisonSheet.page(shown).pdf())
          .build();

  @Override
  public Card<DriverComparisonRequest, DriverComparisonResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.PLAN);
  }

  @Override
  public DriverComparisonRequest ask(PlanReader plan) {
    return new ComparisonOfPlan(plan).request();
  }

  @Override
  public DriverComparisonResult compute(DriverComparisonRequest q, Run run) {
    double density = run.apply(Air.DENSITY, q.temperatureC());
    List<PositionLine> lines = new ArrayList<>();
    for (ComparedPosition position : q.positions()) {
      lines.add(line(position, density, run));
    }
    List<AdditionLine> additions =
        q.additions().stream()
            .map(
                item ->
                    new AdditionLine(
                        item.name(),
                        item.at(),
                        item.massG(),
                        item.price(),
                        MassRemarks.isHeavy(item.massG(), q.heavyG())))
            .toList();
    ComparisonTotals totals = new ComparisonTotals(lines, additions, run);
    List<GroupLine> groups = totals.groups();
    VehicleTotals vehicle = totals.vehicle(groups);

    double speed = Air.SPEED_OF_SOUND.at(q.temperatureC());
    for (int i = 0; i < lines.size(); i++) {
      new PositionRemarks(q.positions().get(i), lines.get(i), "/positions/" + i, speed, run)
          .remark();
    }
    MassRemarks.remark(q, vehicle, run);
    List<PositionLine> judged = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      judged.add(lines.get(i).judged(run.verdictOn("/positions/" + i)));
    }
    return new DriverComparisonResult(
        q.currency(), vehicle, judged, groups, additions.isEmpty() ? null : additions);
  }

  private static PositionLine line(ComparedPosition position, double density, Run run) {
    Driver factory = position.factory();
    Driver replacement = position.replacement();
    ComparedAmplifier first = position.amplifierBefore();
    ComparedAmplifier second = position.amplifierAfter();
    Double voltageBefore =
        first == null || factory == null ? null : (Double) first.cleanV(factory.ratedOhm(), run);
    Double voltageAfter =
        second == null ? voltageBefore : (Double) second.cleanV(replacement.ratedOhm(), run);
    ComparedSide before =
        factory == null
            ? null
            : new SideFigures(position, position.before(), density, run).side(voltageBefore);
    ComparedSide after =
        new SideFigures(position, position.after(), density, run).side(voltageAfter);
    return DriverComparisonResultPositionLineBuilder.builder()
        .name(position.name())
        .zone(position.zone())
        .band(position.band())
        .at(position.at())
        .driverCount(position.driverCount())
        .displacementHz(position.displacementHz())
        .reachLevelDbSpl(position.reachLevelDbSpl())
        .before(before)
        .after(after)
        .change(new ChangeFigures(position, before, after, run).change())
        .build();
  }
}
