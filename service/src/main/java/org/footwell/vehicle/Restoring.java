package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.footwell.parts.plan.FactorySignal;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.parts.plan.VehiclePlan;

/** How a vehicle gets back what it had when it left the factory. */
final class Restoring {

  private final VehiclePlan plan;

  Restoring(VehiclePlan plan) {
    this.plan = plan;
  }

  /** The steps in order; null where the plan names nothing of the factory. */
  List<RestoreLine> lines() {
    List<PlannedPart> gone =
        plan.factoryParts().stream().filter(part -> !placesOf(part).isEmpty()).toList();
    FactorySignal signal = plan.factorySignal();
    if (gone.isEmpty() && signal == null) {
      return null;
    }
    List<RestoreLine> lines = new ArrayList<>();
    gone.forEach(part -> lines.add(line(RestoreStep.KEEP, part)));
    lines.add(new RestoreLine(RestoreStep.TAKE_OUT, added(), null));
    gone.forEach(part -> lines.add(line(RestoreStep.PLUG_BACK, part)));
    if (signal != null) {
      List<String> outputs = signal.outputs().stream().map(FactorySignal.Output::id).toList();
      if (!outputs.isEmpty()) {
        lines.add(new RestoreLine(RestoreStep.RECONNECT, outputs, null));
      }
      lines.add(new RestoreLine(RestoreStep.STAYS, null, null));
    }
    lines.add(new RestoreLine(RestoreStep.CHECK_CHIMES, null, null));
    return lines;
  }

  private RestoreLine line(RestoreStep step, PlannedPart part) {
    return new RestoreLine(step, List.of(part.id()), placesOf(part));
  }

  private List<String> placesOf(PlannedPart part) {
    return plan.drivers().stream()
        .filter(driver -> part.id().equals(driver.replaces()))
        .map(PlacedDriver::id)
        .toList();
  }

  private List<String> added() {
    return Stream.concat(
            plan.drivers().stream().map(PlacedDriver::id),
            plan.amplifiers().stream().map(PlannedAmplifier::id))
        .toList();
  }
}
