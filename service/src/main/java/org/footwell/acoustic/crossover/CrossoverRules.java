package org.footwell.acoustic.crossover;

import static org.footwell.acoustic.crossover.CrossoverFinding.AMPLIFIER_SHARE_TOO_HIGH;
import static org.footwell.acoustic.crossover.CrossoverFinding.CAPACITOR_EFFECT;
import static org.footwell.acoustic.crossover.CrossoverFinding.CAPACITOR_NEAR_RESONANCE;
import static org.footwell.acoustic.crossover.CrossoverFinding.CROSSOVERS_CLOSE;
import static org.footwell.acoustic.crossover.CrossoverFinding.CROSSOVERS_REVERSED;
import static org.footwell.acoustic.crossover.CrossoverFinding.CROSSOVER_COMPROMISE;
import static org.footwell.acoustic.crossover.CrossoverFinding.CROSSOVER_ROOM_SMALL;
import static org.footwell.acoustic.crossover.CrossoverFinding.DISPLACEMENT_LAW_LIMIT;
import static org.footwell.acoustic.crossover.CrossoverFinding.LOWEST_WAY_SHORT;
import static org.footwell.acoustic.crossover.CrossoverFinding.LOW_END_UNDECIDED;
import static org.footwell.acoustic.crossover.CrossoverFinding.NO_CROSSOVER_WINDOW;
import static org.footwell.acoustic.crossover.CrossoverFinding.PROGRAMME_POWER_TOO_HIGH;
import static org.footwell.acoustic.crossover.CrossoverFinding.QTS_ASSUMED;
import static org.footwell.acoustic.crossover.CrossoverFinding.TURN_ON_THUMP;
import static org.footwell.acoustic.crossover.CrossoverFinding.WAYS_OUT_OF_ORDER;
import static org.footwell.acoustic.crossover.CrossoverFinding.WAYS_REVERSED;
import static org.footwell.acoustic.crossover.CrossoverFinding.WAY_DATA_MISSING;
import static org.footwell.acoustic.crossover.CrossoverFinding.WAY_INVERTED;

import java.util.List;
import java.util.stream.Stream;
import org.footwell.acoustic.crossover.CrossoverPlanResult.Choice;
import org.footwell.acoustic.crossover.CrossoverPlanResult.HighLimit;
import org.footwell.acoustic.crossover.CrossoverPlanResult.PlannedCrossover;
import org.footwell.acoustic.crossover.CrossoverPlanResult.ProtectionCapacitor;
import org.footwell.acoustic.crossover.CrossoverPlanResult.WayShare;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.Filter.Kind;
import org.footwell.physics.Piston;

/** What is said about a plan. */
final class CrossoverRules {

  /** A window below this many octaves leaves little to choose; common practice. */
  private static final double SMALL_ROOM_OCTAVES = 1 / 3.0;

  /** Crossovers closer than an octave do not act one by one; common practice. */
  private static final double CLOSE = 2;

  /** Up to here a rigid cone and its displacement say the level. */
  private static final double HIGHEST_KA = 1;

  private final PlanFrame frame;
  private final List<WayModel> ways;
  private final Run run;

  CrossoverRules(PlanFrame frame, List<WayModel> ways, Run run) {
    this.frame = frame;
    this.ways = ways;
    this.run = run;
  }

  void judge(List<PlannedCrossover> crossovers, List<WayShare> shares) {
    ways.forEach(this::data);
    for (int i = 0; i < crossovers.size(); i++) {
      window(crossovers.get(i), ways.get(i + 1));
      if (i > 0) {
        neighbours(crossovers.get(i - 1), crossovers.get(i), ways.get(i));
      }
    }
    lowestWay(crossovers.get(0), shares.get(0));
    for (int i = 0; i < shares.size(); i++) {
      heat(shares.get(i), ways.get(i));
    }
  }

  private void data(WayModel model) {
    CrossoverWay way = model.way();
    if (model.index() > 0) {
      missing(model, way.resonanceHz(), "fs_hz", WayData.HOW_FAR_IT_MOVES);
      missing(model, way.driver().xmaxMm(), "xmax_mm", WayData.THE_ORDER_IT_NEEDS);
      if (model.assumesQ()) {
        run.find(QTS_ASSUMED)
            .at(model.pointer() + "/driver/qts")
            .value(model.excursion().q())
            .own("way", way.id());
      }
      order(ways.get(model.index() - 1), model);
    }
    missing(model, way.driver().sensitivity(), "sensitivity", WayData.ITS_POWER_AND_VOLTAGE);
    missing(
        model,
        way.driver().continuousPowerW(),
        "continuous_power_w",
        WayData.WHETHER_IT_TAKES_ITS_POWER);
  }

  private void order(WayModel below, WayModel above) {
    if (above.isPlainlyBelow(below)) {
      run.find(WAYS_REVERSED)
          .at(above.pointer())
          .own("way", above.way().id())
          .own("below", below.way().id());
    } else if (above.way().driver().sdCm2() > below.way().driver().sdCm2()) {
      run.find(WAYS_OUT_OF_ORDER)
          .at(above.pointer() + "/driver/sd_cm2")
          .value(above.way().driver().sdCm2())
          .limit(below.way().driver().sdCm2())
          .own("way", above.way().id())
          .own("below", below.way().id());
    }
  }

  private void missing(WayModel model, Object given, String field, WayData unjudged) {
    if (given == null) {
      run.find(WAY_DATA_MISSING)
          .at(model.pointer() + "/driver/" + field)
          .own("way", model.way().id())
          .field("what", field)
          .with("unjudged", unjudged);
    }
  }

  private void window(PlannedCrossover crossover, WayModel upper) {
    if (crossover.lowestHz() == null) {
      run.find(LOW_END_UNDECIDED).at(upper.pointer()).own("way", crossover.upperId());
      return;
    }
    if (crossover.frequencyHz() == null || crossover.frequencyReason() == Choice.LOWEST) {
      noWindow(crossover, upper);
    } else if (crossover.windowOctaves() < SMALL_ROOM_OCTAVES) {
      run.find(CROSSOVER_ROOM_SMALL)
          .at(upper.pointer())
          .value(crossover.lowestHz())
          .limit(crossover.highestHz())
          .own("lower", crossover.lowerId())
          .own("upper", crossover.upperId());
    }
    if (crossover.lowestReason() == LowReason.DISPLACEMENT) {
      lawLimit(crossover, upper);
    }
    boolean invert = crossover.order() != null && crossover.order() % 4 == 2;
    if (invert && frame.scope().kind() == Kind.LINKWITZ_RILEY) {
      run.find(WAY_INVERTED)
          .at(upper.pointer())
          .value(crossover.order())
          .own("lower", crossover.lowerId())
          .own("upper", crossover.upperId());
    }
  }

  private void noWindow(PlannedCrossover crossover, WayModel upper) {
    HighLimit high = excluding(crossover);
    run.find(crossover.frequencyHz() == null ? NO_CROSSOVER_WINDOW : CROSSOVER_COMPROMISE)
        .at(upper.pointer())
        .value(crossover.lowestHz())
        .limit(high.frequencyHz())
        .own("lower", crossover.lowerId())
        .own("upper", crossover.upperId())
        .with("low", crossover.lowestReason())
        .with("high", high.reason())
        .with("remedies", remedies(crossover.lowestReason(), high.reason()));
  }

  /** What leaves no proposal: where there is none, the limit that cannot be paid for with sound. */
  private static HighLimit excluding(PlannedCrossover crossover) {
    return crossover.highLimits().stream()
        .filter(limit -> crossover.frequencyHz() != null || !limit.reason().costsSoundOnly())
        .findFirst()
        .orElseThrow();
  }

  /** What would move either end, each once. */
  static Phrase remedies(LowReason low, HighReason high) {
    return Phrase.anyOf(
        Stream.concat(low.remedies().stream(), high.remedies().stream())
            .distinct()
            .map(Phrase::of)
            .toList());
  }

  private void lawLimit(PlannedCrossover crossover, WayModel upper) {
    double ka =
        Piston.KA.at(crossover.lowestHz(), upper.way().driver().sdCm2(), frame.speedOfSoundMPerS());
    if (ka > HIGHEST_KA) {
      run.find(DISPLACEMENT_LAW_LIMIT)
          .at(upper.pointer())
          .value(ka)
          .limit(HIGHEST_KA)
          .own("way", crossover.upperId())
          .with("frequency", crossover.lowestHz());
    }
  }

  private void neighbours(PlannedCrossover below, PlannedCrossover above, WayModel between) {
    if (below.frequencyHz() == null || above.frequencyHz() == null) {
      return;
    }
    if (above.frequencyHz() < below.frequencyHz() * CLOSE) {
      run.find(above.frequencyHz() > below.frequencyHz() ? CROSSOVERS_CLOSE : CROSSOVERS_REVERSED)
          .at(between.pointer())
          .value(above.frequencyHz())
          .limit(below.frequencyHz())
          .own("way", between.way().id());
    }
  }

  private void lowestWay(PlannedCrossover crossover, WayShare lowest) {
    if (crossover.frequencyHz() != null
        && lowest.fullLevelFromHz() != null
        && lowest.fullLevelFromHz() > crossover.frequencyHz()) {
      run.find(LOWEST_WAY_SHORT)
          .at("/ways/0/driver/xmax_mm")
          .value(lowest.fullLevelFromHz())
          .limit(crossover.frequencyHz())
          .own("way", lowest.id());
    }
  }

  private void heat(WayShare share, WayModel model) {
    if (share.programmeMarginDb() != null && share.programmeMarginDb() < 0) {
      run.find(PROGRAMME_POWER_TOO_HIGH)
          .at(model.pointer() + "/driver/continuous_power_w")
          .value(share.programmePowerW())
          .limit(model.way().driver().continuousPowerW())
          .own("way", share.id());
    }
    if (share.amplifierMarginDb() != null && share.amplifierMarginDb() < 0) {
      run.find(AMPLIFIER_SHARE_TOO_HIGH)
          .at("/total_power_w")
          .value(share.amplifierShareW())
          .limit(model.way().driver().continuousPowerW())
          .own("way", share.id());
    }
  }

  void capacitor(ProtectionCapacitor capacitor, CrossoverWay way) {
    run.find(CAPACITOR_EFFECT)
        .at("/protection")
        .value(capacitor.capacitorUf())
        .own("way", capacitor.id())
        .with("loss", -capacitor.levelDb())
        .with("phase", capacitor.phaseDeg());
    run.find(TURN_ON_THUMP).at("/protection").own("way", capacitor.id());
    Double resonance = way.resonanceHz();
    // Within an octave of the resonance the impedance is not the rated one.
    if (resonance != null && capacitor.cornerHz() < 2 * resonance) {
      run.find(CAPACITOR_NEAR_RESONANCE)
          .at("/protection")
          .value(capacitor.cornerHz())
          .limit(resonance)
          .own("way", capacitor.id());
    }
  }
}
