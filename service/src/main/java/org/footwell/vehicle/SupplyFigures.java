package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.List;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.vehicle.PlanReviewResult.FedLine;
import org.footwell.vehicle.PlanReviewResult.SupplyLine;
import org.footwell.vehicle.chain.EngineState;
import org.footwell.vehicle.chain.Operation;
import org.footwell.vehicle.reading.Modelled;

/** What the supply brings in each situation, without a judgement. */
public final class SupplyFigures {

  private SupplyFigures() {}

  /** One line per situation the plan knows; none without a supply. */
  public static List<SupplyLine> of(Modelled modelled) {
    List<SupplyLine> lines = new ArrayList<>();
    for (EngineState situation : modelled.model().sources().keySet()) {
      lines.add(line(situation, modelled));
    }
    return lines;
  }

  private static SupplyLine line(EngineState situation, Modelled modelled) {
    Operation operation = modelled.operations().get(situation);
    if (!operation.works()) {
      return new SupplyLine(situation, null, null, null, null, List.of());
    }
    boolean sine = operation.sine() != null;
    List<FedLine> amplifiers = new ArrayList<>();
    for (PlannedAmplifier amplifier : modelled.index().plan().amplifiers()) {
      amplifiers.add(fed(amplifiers.size(), amplifier, operation, modelled));
    }
    return new SupplyLine(
        situation,
        operation.mean().batteryV(),
        sine ? (Double) operation.sine().batteryV() : null,
        operation.mean().totalA(),
        sine ? (Double) operation.sine().totalA() : null,
        amplifiers);
  }

  private static FedLine fed(
      int a, PlannedAmplifier amplifier, Operation operation, Modelled modelled) {
    double volts = operation.mean().loadV().get(a);
    return new FedLine(
        amplifier.id(),
        volts,
        operation.sine() == null ? null : operation.sine().loadV().get(a),
        operation.mean().currentA().get(a),
        cleanW(a, volts, modelled));
  }

  /** Clean sine power of all channels of an amplifier at a supply voltage, W. */
  static double cleanW(int a, double volts, Modelled modelled) {
    return modelled.index().channelsOf(a).stream()
        .mapToDouble(c -> modelled.model().channels().get(c).chain().output().cleanW(volts))
        .sum();
  }
}
