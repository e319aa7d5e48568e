package org.footwell.acoustic.crossover;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.crossover.CrossoverPlanResult.PlannedCrossover;
import org.footwell.acoustic.crossover.CrossoverPlanResult.WayShare;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.physics.Electricity;
import org.footwell.physics.Piston;

/** What each way gets of the programme, and what its amplifier must give. */
final class WayShares {

  private static final Formula.Of1 PEAK_OF_SINE =
      Formula.of("peak_v", "√2·U", "V", DEFINITION).with("U", u -> Math.sqrt(2) * u);
  private static final Formula.Of2 PART =
      Formula.of("way_power_w", "P·share", "W", DEFINITION).with("P", "share", (p, s) -> p * s);
  private static final Formula.Of2 MARGIN =
      Formula.of("margin_db", "10·lg(Pc/P)", "dB", DEFINITION)
          .with("Pc", "P", (continuous, p) -> Decibels.ofPower(continuous / p));

  /** Average of a programme whose peaks just clip an amplifier of a clean sine power. */
  private static final Formula.Of2 AVERAGE =
      Formula.of("average_power_w", "P·10^((3.01 − crest)/10)", "W", DEFINITION)
          .with("P", "crest", (p, c) -> p * Decibels.toPower(Decibels.SINE_CREST - c));

  private final PlanFrame frame;
  private final List<PlannedCrossover> crossovers;
  private final Arithmetic steps;

  WayShares(PlanFrame frame, List<PlannedCrossover> crossovers, Arithmetic steps) {
    this.frame = frame;
    this.crossovers = crossovers;
    this.steps = steps;
  }

  /**
   * One for each way.
   *
   * @param totalPowerW clean sine power of all amplifiers together, W, or null
   */
  List<WayShare> of(List<WayModel> ways, Double totalPowerW, double crestFactorDb) {
    Double average = totalPowerW == null ? null : steps.apply(AVERAGE, totalPowerW, crestFactorDb);
    List<WayShare> all = new ArrayList<>();
    for (WayModel way : ways) {
      all.add(of(way, average));
    }
    return all;
  }

  private WayShare of(WayModel model, Double average) {
    CrossoverWay way = model.way();
    Double share = share(model);
    Double sineW = model.sinePowerW();
    Double sineV =
        sineW == null ? null : steps.apply(Electricity.VOLTAGE, sineW, way.driver().ratedOhm());
    Double peakV = sineV == null ? null : steps.apply(PEAK_OF_SINE, sineV);
    Double programme = part(model.wholeProgrammeW(), share);
    Double amplifier = part(average, share);
    return CrossoverPlanResultWayShareBuilder.builder()
        .id(way.id())
        .effectiveDiameterMm(steps.apply(Piston.EFFECTIVE_DIAMETER, way.driver().sdCm2()))
        .beamingHz(model.beamingHz())
        .fullLevelFromHz(model.fullLevelFromHz(frame, steps))
        .shareDb(share == null ? null : Decibels.ofPower(share))
        .sineV(sineV)
        .sinePowerW(sineW)
        .peakV(peakV)
        .peakA(
            peakV == null || way.driver().reOhm() == null
                ? null
                : steps.apply(Electricity.CURRENT, peakV, way.driver().reOhm()))
        .programmePowerW(programme)
        .programmeMarginDb(margin(way, programme))
        .amplifierShareW(amplifier)
        .amplifierMarginDb(margin(way, amplifier))
        .build();
  }

  private Double part(Double whole, Double share) {
    return whole == null || share == null ? null : steps.apply(PART, whole, share);
  }

  private Double margin(CrossoverWay way, Double power) {
    return power == null || way.driver().continuousPowerW() == null
        ? null
        : steps.apply(MARGIN, way.driver().continuousPowerW(), power);
  }

  /** Share of the programme behind the filters proposed, or null when one is not. */
  private Double share(WayModel model) {
    int i = model.index();
    AnalogFilter highPass = i == 0 ? null : filter(crossovers.get(i - 1), true);
    AnalogFilter lowPass = i == crossovers.size() ? null : filter(crossovers.get(i), false);
    if ((i > 0 && highPass == null) || (i < crossovers.size() && lowPass == null)) {
      return null;
    }
    steps.checkDeadline();
    return frame.spectrum().share(f -> power(highPass, f) * power(lowPass, f));
  }

  private AnalogFilter filter(PlannedCrossover crossover, boolean highPass) {
    if (crossover.frequencyHz() == null) {
      return null;
    }
    Filter filter =
        new Filter(frame.scope().kind(), crossover.order(), crossover.frequencyHz(), null);
    return highPass ? filter.highPass() : filter.lowPass();
  }

  private static double power(AnalogFilter filter, double f) {
    return filter == null ? 1 : filter.squaredMagnitude(f);
  }
}
