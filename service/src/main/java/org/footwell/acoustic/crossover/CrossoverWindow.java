package org.footwell.acoustic.crossover;

import java.util.List;
import org.footwell.acoustic.crossover.CrossoverPlanResult.HighLimit;
import org.footwell.acoustic.crossover.CrossoverPlanResult.LowLimit;
import org.footwell.calculation.Arithmetic;

/**
 * Where two ways may hand over: from the lowest frequency the upper one is at ease with to the highest
 * of the lower one, as crossover-plan finds it.
 *
 * @param lowestHz null where nothing about the upper driver decides it
 * @param lowestReason what decides it, or null
 */
public record CrossoverWindow(
    Double lowestHz, LowReason lowestReason, double highestHz, HighReason highestReason) {

  /**
   * The window of two ways with everything else as it stands when nothing is said.
   *
   * @param sineDbSpl level a sine must reach at the distance in m
   */
  public static CrossoverWindow of(
      CrossoverWay lower,
      CrossoverWay upper,
      double sineDbSpl,
      double distanceM,
      double temperatureC) {
    CrossoverPlanRequest question =
        CrossoverPlanRequest.standard(List.of(lower, upper), sineDbSpl, distanceM, temperatureC);
    PlanFrame frame = PlanFrame.of(question, Arithmetic.SILENT);
    List<WayModel> ways =
        List.of(WayModel.of(0, frame, Arithmetic.SILENT), WayModel.of(1, frame, Arithmetic.SILENT));
    CrossoverLimits limits = new CrossoverLimits(frame, ways, Arithmetic.SILENT);
    List<LowLimit> low = limits.lowLimits(ways.get(1));
    HighLimit high = limits.highLimits(ways.get(0)).get(0);
    LowLimit last = CrossoverLimits.decided(low) ? low.get(low.size() - 1) : null;
    return new CrossoverWindow(
        last == null ? null : (Double) last.frequencyHz(),
        last == null ? null : last.reason(),
        high.frequencyHz(),
        high.reason());
  }
}
