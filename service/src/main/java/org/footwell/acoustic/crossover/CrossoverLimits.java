package org.footwell.acoustic.crossover;

import static org.footwell.calculation.Source.COMMON_PRACTICE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.footwell.acoustic.crossover.CrossoverPlanResult.HighLimit;
import org.footwell.acoustic.crossover.CrossoverPlanResult.LowLimit;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.parts.WayRole;

/**
 * How low and how high each way may be used.
 *
 * <p>Heat is judged last: it depends on how much of the programme a way takes, so on its other end
 * too. There the widest band that its own limits allow counts, so that a limit by heat is on the
 * safe side.
 */
final class CrossoverLimits {

  private static final Formula.Of2 MULTIPLE =
      Formula.of("lowest_hz", "n·f0", "Hz", COMMON_PRACTICE)
          .with("n", "f0", (n, resonance) -> n * resonance);
  private static final Formula.Of3 SPACING =
      Formula.of("highest_hz", "n·c/(d/1000)", "Hz", COMMON_PRACTICE)
          .with("n", "c", "d", (n, c, mm) -> n * c / (mm / 1000));

  private final PlanFrame frame;
  private final List<WayModel> ways;
  private final List<List<LowLimit>> low = new ArrayList<>();
  private final List<List<HighLimit>> high = new ArrayList<>();

  CrossoverLimits(PlanFrame frame, List<WayModel> ways, Arithmetic steps) {
    this.frame = frame;
    this.ways = ways;
    for (WayModel way : ways) {
      low.add(way.index() == 0 ? List.of() : lowOf(way, steps));
      high.add(way.index() == ways.size() - 1 ? List.of() : highOf(way, steps));
    }
  }

  /** What speaks against using a way lower, from low to high. */
  List<LowLimit> lowLimits(WayModel way) {
    List<LowLimit> all = new ArrayList<>(low.get(way.index()));
    Double allowed = way.shareAllowed();
    if (allowed != null) {
      double above = shareBelowTop(way) - allowed;
      if (above > 0) {
        all.add(new LowLimit(LowReason.HEAT, frame.spectrum().frequencyOf(above)));
      }
    }
    all.sort(Comparator.comparingDouble(LowLimit::frequencyHz));
    return all;
  }

  /** What speaks against using a way higher, from low to high. */
  List<HighLimit> highLimits(WayModel way) {
    List<HighLimit> all = new ArrayList<>(high.get(way.index()));
    Double allowed = way.shareAllowed();
    if (allowed != null) {
      double below = shareBelowBottom(way) + allowed;
      if (below < 1) {
        all.add(new HighLimit(HighReason.HEAT, frame.spectrum().frequencyOf(below)));
      }
    }
    all.sort(Comparator.comparingDouble(HighLimit::frequencyHz));
    return all;
  }

  /** Whether anything about the driver itself says how low it may go. */
  static boolean decided(List<LowLimit> limits) {
    return limits.stream()
        .anyMatch(l -> l.reason() != LowReason.PROCESSOR && l.reason() != LowReason.HEAT);
  }

  private double shareBelowTop(WayModel way) {
    return high.get(way.index()).stream().mapToDouble(HighLimit::frequencyHz).min().stream()
        .map(frame.spectrum()::below)
        .findFirst()
        .orElse(1);
  }

  private double shareBelowBottom(WayModel way) {
    return low.get(way.index()).stream().mapToDouble(LowLimit::frequencyHz).max().stream()
        .map(frame.spectrum()::below)
        .findFirst()
        .orElse(0);
  }

  private List<LowLimit> lowOf(WayModel model, Arithmetic steps) {
    List<LowLimit> all = new ArrayList<>();
    CrossoverWay way = model.way();
    if (way.resonanceHz() != null) {
      double lowest = steps.apply(MULTIPLE, multiple(model), way.resonanceHz());
      all.add(new LowLimit(LowReason.RESONANCE, lowest));
    }
    Double displacement = byDisplacement(model);
    if (displacement != null) {
      all.add(new LowLimit(LowReason.DISPLACEMENT, displacement));
    }
    if (way.driver().lowerLimitHz() != null) {
      all.add(new LowLimit(LowReason.DATA_SHEET, way.driver().lowerLimitHz()));
    }
    all.add(new LowLimit(LowReason.PROCESSOR, frame.scope().processorLowestHz()));
    return all;
  }

  private double multiple(WayModel model) {
    Double given = model.way().resonanceMultiple();
    if (given != null) {
      return given;
    }
    return isTweeter(model) ? CrossoverWindow.TWEETER_MULTIPLE : 1;
  }

  private boolean isTweeter(WayModel model) {
    WayRole role = model.way().role();
    return role == null ? model.index() == ways.size() - 1 : role == WayRole.TWEETER;
  }

  /** The lowest corner with the most helpful order, or null when displacement sets none. */
  private static Double byDisplacement(WayModel model) {
    List<Double> corners = new ArrayList<>();
    for (WayModel.Corner corner : model.corners()) {
      if (corner.lowestHz() == null) {
        return null;
      }
      corners.add(corner.lowestHz());
    }
    return corners.isEmpty() ? null : Collections.min(corners);
  }

  private List<HighLimit> highOf(WayModel model, Arithmetic steps) {
    List<HighLimit> all = new ArrayList<>();
    CrossoverWay way = model.way();
    all.add(new HighLimit(HighReason.BEAMING, model.beamingHz()));
    if (way.spacingToNextMm() != null) {
      double highest =
          steps.apply(
              SPACING,
              frame.scope().spacingWavelengths(),
              frame.speedOfSoundMPerS(),
              way.spacingToNextMm());
      all.add(new HighLimit(HighReason.SPACING, highest));
    }
    if (way.role() == WayRole.SUBWOOFER) {
      all.add(new HighLimit(HighReason.LOCALISATION, frame.scope().subwooferHighestHz()));
    }
    if (way.driver().upperLimitHz() != null) {
      all.add(new HighLimit(HighReason.DATA_SHEET, way.driver().upperLimitHz()));
    }
    all.add(new HighLimit(HighReason.PROCESSOR, frame.scope().processorHighestHz()));
    return all;
  }
}
