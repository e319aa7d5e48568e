package org.footwell.vehicle.curves;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.vehicle.chain.DriverModel;
import org.footwell.vehicle.chain.Grid;
import org.footwell.vehicle.curves.PlanCurvesResult.ReplacementCurve;
import org.footwell.vehicle.reading.Modelled;

/** What replaces factory parts against what it replaces, each driver alone. */
final class BeforeAfter {

  private BeforeAfter() {}

  static List<ReplacementCurve> curves(Modelled modelled) {
    PlanIndex index = modelled.index();
    List<ReplacementCurve> curves = new ArrayList<>();
    for (int d = 0; d < index.plan().drivers().size(); d++) {
      if (index.replacedBy(d) < 0) {
        continue;
      }
      PlacedDriver place = index.plan().drivers().get(d);
      DriverModel before =
          alone(index.plan().factoryParts().get(index.replacedBy(d)), place, index);
      DriverModel after = alone(index.part(d), place, index);
      if (before.heard() && after.heard()) {
        curves.add(
            new ReplacementCurve(
                place.id(),
                before.part().id(),
                after.part().id(),
                over(modelled.grid(), before::levelDbSpl),
                over(modelled.grid(), after::levelDbSpl)));
      }
    }
    return curves;
  }

  /** A part with all its voice coils driven, in what the back of that place works into. */
  private static DriverModel alone(PlannedPart part, PlacedDriver place, PlanIndex index) {
    double temperature = index.plan().vehicle().temperatureC();
    return DriverModel.of(part, place.enclosure(), part.coilCount(), temperature);
  }

  private static List<Double> over(Grid grid, DoubleUnaryOperator level) {
    return IntStream.range(0, grid.size()).mapToObj(k -> level.applyAsDouble(grid.hz(k))).toList();
  }
}
