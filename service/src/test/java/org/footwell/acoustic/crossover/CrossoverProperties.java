package org.footwell.acoustic.crossover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.footwell.acoustic.crossover.CrossoverPlanResult.PlannedCrossover;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.physics.ProgrammeSpectrum;

class CrossoverProperties {

  @Property(tries = 100)
  void atTheLowestCornerTheLargestDisplacementIsXmax(
      @ForAll Kind kind,
      @ForAll @IntRange(min = 1, max = 4) int halfOrder,
      @ForAll @DoubleRange(min = 0.3, max = 3) double q,
      @ForAll @DoubleRange(min = 30, max = 2000) double resonance) {
    FilteredExcursion excursion = new FilteredExcursion(20, 0.5, resonance, q, 105, 1.2041);
    FilteredExcursion.Peak corner = excursion.lowestCorner(kind, 2 * halfOrder);
    if (corner != null) {
      Filter filter = new Filter(kind, 2 * halfOrder, corner.value(), null);
      assertEquals(0.5, excursion.largest(filter.highPass()).value(), 5e-5);
    }
  }

  @Property(tries = 50)
  void aLouderLevelNeverAllowsALowerCrossover(
      @ForAll @DoubleRange(min = 80, max = 120) double level) {
    assertTrue(lowest(level + 1) >= lowest(level) - 1e-9);
  }

  private static double lowest(double level) {
    FilteredExcursion.Peak corner =
        new FilteredExcursion(6, 0.3, 900, 0.7, level, 1.2041).lowestCorner(Kind.BUTTERWORTH, 2);
    return corner == null ? 0 : corner.value();
  }

  @Property(tries = 100)
  void aFrequencyIsFoundAgainFromTheShareBelowIt(
      @ForAll @DoubleRange(min = 21, max = 19000) double hz) {
    for (ProgrammeSpectrum spectrum :
        List.of(ProgrammeSpectrum.simulated(), ProgrammeSpectrum.pink(20, 20000))) {
      assertEquals(hz, spectrum.frequencyOf(spectrum.below(hz)), 1e-6 * hz);
    }
  }

  @Property(tries = 50)
  void aProposalWithAWindowLiesInItAndKeepsTheDisplacement(
      @ForAll @DoubleRange(min = 80, max = 115) double level,
      @ForAll @DoubleRange(min = 300, max = 1300) double resonance) {
    TwoWays draft = new TwoWays();
    draft.plan.wantedLevelDbSpl(level);
    draft.high().fsHz(resonance);
    PlannedCrossover crossover = draft.result().crossovers().get(0);
    if (crossover.windowOctaves() >= 0) {
      assertTrue(crossover.frequencyHz() >= crossover.lowestHz());
      assertTrue(crossover.frequencyHz() <= crossover.highestHz());
      assertTrue(
          crossover.slopes().stream()
              .filter(slope -> slope.order() == crossover.order())
              .allMatch(slope -> slope.displacementMm() <= 0.3 * (1 + 1e-6)));
    }
  }

  @Property(tries = 50)
  void theLevelScalesThePowerByDecibels(@ForAll @DoubleRange(min = 60, max = 110) double level) {
    TwoWays draft = new TwoWays();
    draft.plan.wantedLevelDbSpl(level);
    double power = draft.result().ways().get(0).sinePowerW();
    draft.plan.wantedLevelDbSpl(level + 10);
    assertEquals(10 * power, draft.result().ways().get(0).sinePowerW(), 1e-9 * power);
  }
}
