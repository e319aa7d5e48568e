package org.footwell.vehicle.curves;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.footwell.Answers;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;
import org.footwell.vehicle.ModelledPlans;
import org.footwell.vehicle.curves.PlanCurvesResult.ChannelCurve;
import org.footwell.vehicle.curves.PlanCurvesResult.ReplacementCurve;

/** Curves of vehicles against their second working in SciPy at the mid-bands of seven third octaves. */
class PlanCurvesOutsideChecks extends OutsideChecks {

  private static final Map<String, PlanCurvesResult> CURVES = new ConcurrentHashMap<>();

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        check("impedance_ohm").withinRelative(1e-6),
        // Levels and movement hang on gains and trims, which sums over the spectrum are behind.
        check("displacement_mm").withinRelative(0.003),
        check("level_db_spl").within(0.03),
        check("headroom_db").within(0.03),
        check("before_db_spl").within(1e-6),
        check("after_db_spl").within(1e-6));
  }

  private static OutsideCheck check(String quantity) {
    return OutsideCheck.of("plan-curves", quantity, "scipy-vehicle-curves.csv")
        .rows(row -> row.text("quantity").equals(quantity))
        .printed("value")
        .computed(PlanCurvesOutsideChecks::value);
  }

  private static PlanCurvesResult curves(String vehicle) {
    VehiclePlan plan = ModelledPlans.plan(ModelledPlans.json(vehicle));
    return Answers.of(new PlanCurves(), plan).result();
  }

  private static double value(Row row) {
    PlanCurvesResult curves =
        CURVES.computeIfAbsent(row.text("vehicle"), PlanCurvesOutsideChecks::curves);
    return figures(curves, row.text("place"), row.text("quantity"))
        .get(nearest(curves.frequenciesHz(), row.number("frequency_hz")));
  }

  private static List<Double> figures(PlanCurvesResult curves, String place, String quantity) {
    if (place.startsWith("@")) {
      return curves.seats().stream()
          .filter(seat -> seat.name().equals(place.substring(1)))
          .findFirst()
          .orElseThrow()
          .levelDbSpl();
    }
    if (quantity.equals("before_db_spl") || quantity.equals("after_db_spl")) {
      ReplacementCurve both =
          curves.replacements().stream()
              .filter(one -> one.driver().equals(place))
              .findFirst()
              .orElseThrow();
      return quantity.startsWith("before") ? both.beforeDbSpl() : both.afterDbSpl();
    }
    if (quantity.equals("displacement_mm")) {
      return curves.drivers().stream()
          .filter(driver -> driver.id().equals(place))
          .findFirst()
          .orElseThrow()
          .displacementMm();
    }
    ChannelCurve channel =
        curves.channels().stream().filter(one -> one.id().equals(place)).findFirst().orElseThrow();
    return switch (quantity) {
      case "impedance_ohm" -> channel.impedanceOhm();
      case "level_db_spl" -> channel.levelDbSpl();
      default -> channel.headroomDb();
    };
  }

  /** The middle place of a third octave is its exact mid-band. */
  private static int nearest(List<Double> all, double hz) {
    for (int k = 0; k < all.size(); k++) {
      if (Math.abs(all.get(k) / hz - 1) < 1e-6) {
        return k;
      }
    }
    throw new AssertionError(hz + " Hz is not among them");
  }
}
