package org.footwell.vehicle;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.electrical.impedance.ImpedanceCurve;
import org.footwell.electrical.impedance.ImpedanceCurveRequest;
import org.footwell.electrical.impedance.ImpedanceCurveResult;
import org.footwell.electrical.load.WiringLoadResult;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;

/** The lowest load a channel really presents, where the data of its drivers is there. */
final class ChannelLowestLoad {

  private static final ImpedanceCurve IMPEDANCE_CURVE = new ImpedanceCurve();

  private final VehiclePlan plan;
  private final Resolved resolved;
  private final Run run;
  private final Map<Integer, Optional<Double>> lowestOverRated = new HashMap<>();

  ChannelLowestLoad(VehiclePlan plan, Resolved resolved, Run run) {
    this.plan = plan;
    this.resolved = resolved;
    this.run = run;
  }

  /**
   * Lowest modulus over frequency, ohm: the rated load times the lowest ratio of modulus to rated
   * impedance among its drivers. Exact for equal drivers, a lower bound for others. Null where the
   * data of a driver is missing.
   */
  Double of(int channel, WiringLoadResult load) {
    double ratio = Double.MAX_VALUE;
    for (int driver : resolved.driversOf(channel)) {
      Optional<Double> lowest =
          lowestOverRated.computeIfAbsent(resolved.partOf(driver), this::lowestOverRated);
      if (lowest.isEmpty()) {
        return null;
      }
      ratio = Math.min(ratio, lowest.get());
    }
    return load.loadOhm() * ratio;
  }

  private Optional<Double> lowestOverRated(int index) {
    VehiclePlan.Part part = plan.newParts().get(index);
    if (part.impedance() == null) {
      return Optional.empty();
    }
    String at = "/new_parts/" + index;
    Rebase places =
        Rebase.to(at, part.id())
            .from("/driver", at + "/impedance")
            .with("/driver/rated_ohm", at + "/rated_ohm");
    Driver rated = DriverBuilder.builder(part.impedance()).ratedOhm(part.ratedOhm()).build();
    return run.call(IMPEDANCE_CURVE, new ImpedanceCurveRequest(rated, null, null), places)
        .map(ImpedanceCurveResult::lowestModulusOhm)
        .map(lowest -> lowest / part.ratedOhm());
  }
}
