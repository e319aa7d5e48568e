package org.footwell.acoustic.crossover;

import static org.footwell.calculation.Source.COMMON_PRACTICE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.footwell.acoustic.crossover.CrossoverPlanResult.Choice;
import org.footwell.acoustic.crossover.CrossoverPlanResult.HighLimit;
import org.footwell.acoustic.crossover.CrossoverPlanResult.LowLimit;
import org.footwell.acoustic.crossover.CrossoverPlanResult.PlannedCrossover;
import org.footwell.acoustic.crossover.CrossoverPlanResult.PlannedSlope;
import org.footwell.acoustic.crossover.FilteredExcursion.Peak;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Octaves;
import org.footwell.physics.Piston;

/** The crossover between two ways: its window, the frequency proposed and the order. */
final class CrossoverChoice {

  private static final Formula.Of2 MIDDLE =
      Formula.of("frequency_hz", "√(lowest·highest)", "Hz", COMMON_PRACTICE)
          .with("lowest", "highest", (low, high) -> Math.sqrt(low * high));
  private static final Formula.Of1 OCTAVE_ABOVE =
      Formula.of("frequency_hz", "2·lowest", "Hz", COMMON_PRACTICE).with("lowest", low -> 2 * low);

  /** Orders are held against the proposal with this much room for rounding. */
  private static final double ROUNDING = 1 + 1e-9;

  private static final double DB_PER_ORDER = 20 * Math.log10(2);

  private final PlanFrame frame;
  private final WayModel lower;
  private final WayModel upper;
  private final Arithmetic steps;

  CrossoverChoice(PlanFrame frame, WayModel lower, WayModel upper, Arithmetic steps) {
    this.frame = frame;
    this.lower = lower;
    this.upper = upper;
    this.steps = steps;
  }

  PlannedCrossover of(List<LowLimit> lowLimits, List<HighLimit> highLimits) {
    HighLimit high = highLimits.get(0);
    LowLimit low = CrossoverLimits.decided(lowLimits) ? lowLimits.get(lowLimits.size() - 1) : null;
    Choice choice = low == null ? null : choice(low, high, highLimits);
    Double frequency = choice == null ? null : Double.valueOf(frequency(choice, low, high));
    List<PlannedSlope> slopes = slopes(frequency);
    Integer order = frequency == null ? null : Integer.valueOf(order(choice, slopes));
    if (frequency != null && upper.excursion() != null) {
      noteDisplacement(frequency, order, slopes);
    }
    return CrossoverPlanResultPlannedCrossoverBuilder.builder()
        .lowerId(lower.way().id())
        .upperId(upper.way().id())
        .lowestHz(low == null ? null : low.frequencyHz())
        .lowestReason(low == null ? null : low.reason())
        .highestHz(high.frequencyHz())
        .highestReason(high.reason())
        .windowOctaves(low == null ? null : Octaves.between(low.frequencyHz(), high.frequencyHz()))
        .frequencyHz(frequency)
        .frequencyReason(choice)
        .order(order)
        .slopeDb(order == null ? null : Double.valueOf(order * DB_PER_ORDER))
        .lowerKa(
            frequency == null
                ? null
                : Double.valueOf(
                    steps.apply(
                        Piston.KA,
                        frequency,
                        lower.way().driver().sdCm2(),
                        frame.speedOfSoundMPerS())))
        .lowLimits(lowLimits)
        .highLimits(highLimits)
        .slopes(slopes)
        .build();
  }

  /** How the frequency is chosen, or null when no frequency can be proposed. */
  private static Choice choice(LowLimit low, HighLimit high, List<HighLimit> highLimits) {
    double lowest = low.frequencyHz();
    if (lowest <= high.frequencyHz()) {
      // A middle more than an octave above the low end is the end of a window of two octaves.
      return high.frequencyHz() > 4 * lowest ? Choice.OCTAVE_ABOVE_LOWEST : Choice.MIDDLE;
    }
    boolean onlySound =
        highLimits.stream()
            .filter(limit -> limit.frequencyHz() < lowest)
            .allMatch(limit -> limit.reason().costsSoundOnly());
    return onlySound ? Choice.LOWEST : null;
  }

  private double frequency(Choice choice, LowLimit low, HighLimit high) {
    return switch (choice) {
      case MIDDLE -> steps.apply(MIDDLE, low.frequencyHz(), high.frequencyHz());
      case OCTAVE_ABOVE_LOWEST -> steps.apply(OCTAVE_ABOVE, low.frequencyHz());
      case LOWEST -> low.frequencyHz();
    };
  }

  private List<PlannedSlope> slopes(Double frequency) {
    if (upper.excursion() == null) {
      return null;
    }
    List<PlannedSlope> slopes = new ArrayList<>();
    for (WayModel.Corner corner : upper.corners()) {
      steps.checkDeadline();
      int order = corner.order();
      Double lowest = corner.lowestHz();
      Peak largest =
          frequency == null ? null : upper.excursion().largest(highPass(order, frequency));
      slopes.add(
          new PlannedSlope(
              order,
              lowest,
              largest == null ? null : largest.value(),
              largest == null ? null : largest.frequencyHz(),
              frequency == null
                  ? null
                  : Boolean.valueOf(lowest == null || lowest <= frequency * ROUNDING)));
    }
    return slopes;
  }

  /**
   * The lowest order that holds the displacement; the highest where that is not known, and without
   * a window: there each way plays where it should not, as briefly as possible.
   */
  private int order(Choice choice, List<PlannedSlope> slopes) {
    int highest = frame.scope().orders().get(frame.scope().orders().size() - 1);
    return slopes == null || choice == Choice.LOWEST
        ? highest
        : slopes.stream()
            .filter(PlannedSlope::withinXmax)
            .mapToInt(PlannedSlope::order)
            .findFirst()
            .orElse(highest);
  }

  /** Displacement once more at its largest, with workings. */
  private void noteDisplacement(double frequency, int order, List<PlannedSlope> slopes) {
    double f =
        slopes.stream()
            .filter(slope -> slope.order() == order)
            .map(PlannedSlope::displacementAtHz)
            .filter(Objects::nonNull)
            .findFirst()
            .orElseThrow();
    FilteredExcursion excursion = upper.excursion();
    steps.apply(
        FilteredExcursion.BEHIND_FILTER,
        steps.apply(
            Piston.DISPLACEMENT_OF_LEVEL,
            f,
            excursion.sdCm2(),
            excursion.levelDbSpl(),
            excursion.density()),
        steps.apply(FilteredExcursion.OWN_RESPONSE, f, excursion.resonanceHz(), excursion.q()),
        Math.sqrt(highPass(order, frequency).squaredMagnitude(f)));
  }

  private AnalogFilter highPass(int order, double frequency) {
    return new Filter(frame.scope().kind(), order, frequency, null).highPass();
  }
}
