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

  /** A tweeter plays from this multiple of its resonance on; common practice, no source. */
  public static final double TWEETER_MULTIPLE = 2;

  /** The window of two ways that play a programme, with everything else as usual. */
  public static CrossoverWindow of(
      CrossoverWay lower, CrossoverWay upper, WantedLevel wanted, double temperatureC) {
    Arithmetic silent = Arithmetic.SILENT;
    PlanFrame frame =
        PlanFrame.of(List.of(lower, upper), CrossoverScope.USUAL, wanted, temperatureC, silent);
    List<WayModel> ways = List.of(WayModel.of(0, frame, silent), WayModel.of(1, frame, silent));
    CrossoverLimits limits = new CrossoverLimits(frame, ways, silent);
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
