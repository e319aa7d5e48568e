package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.Setup.filter;
import static org.footwell.acoustic.alignment.Setup.lr4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleFunction;
import org.footwell.parts.Filter.Kind;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Phasor;
import org.junit.jupiter.api.Test;

/** Hand-worked cases; many more are held against SciPy by {@link PhaseMatchOutsideChecks}. */
class PhaseMatchTest {

  private static final DoubleFunction<Phasor> LOW = lr4(80).lowPass()::at;
  private static final DoubleFunction<Phasor> HIGH = lr4(80).highPass()::at;

  @Test
  void aLinkwitzRileyPairOfTheFourthOrderIsInPhaseEverywhere() {
    PhaseMatch match = PhaseMatch.of(LOW, List.of(HIGH), 80, true);
    assertEquals(0, match.asGiven().delayMs(), 0);
    assertEquals(0, match.asGiven().lossDb(), 1e-9);
    assertEquals(0, match.asGiven().flightLossDb(), 1e-9);
    assertFalse(match.asGiven().atEdge());
    assertFalse(match.inversionAdvised());
  }

  @Test
  void invertedItCancelsAndTheOtherPolarityIsAdvised() {
    PhaseMatch match = PhaseMatch.of(f -> LOW.apply(f).times(-1), List.of(HIGH), 80, true);
    assertEquals(-100, match.asGiven().flightLossDb(), 0);
    // Half a period less what the tolerance allows; earlier and later are alike, so later.
    assertEquals(5.7958, match.asGiven().delayMs(), 0.001);
    assertEquals(-0.807, match.asGiven().lossDb(), 0.001);
    assertEquals(0, match.inverted().delayMs(), 0);
    // It loses only 0.8 dB less, but it is at flight time.
    assertTrue(match.inversionAdvised());
  }

  @Test
  void theSecondOrderNeedsOneWayInverted() {
    PhaseMatch match =
        PhaseMatch.of(
            filter(Kind.LINKWITZ_RILEY, 2, 80).lowPass()::at,
            List.of(filter(Kind.LINKWITZ_RILEY, 2, 80).highPass()::at),
            80,
            true);
    assertTrue(match.inversionAdvised());
    assertEquals(0, match.inverted().lossDb(), 1e-9);
    assertEquals(0, match.inverted().delayMs(), 0);
  }

  @Test
  void oddOrdersAreAsGoodEitherWaySoNothingIsAdvised() {
    PhaseMatch match =
        PhaseMatch.of(
            filter(Kind.BUTTERWORTH, 3, 80).lowPass()::at,
            List.of(filter(Kind.BUTTERWORTH, 3, 80).highPass()::at),
            80,
            true);
    // A quarter of a turn at every frequency: cos 45° of the sum.
    assertEquals(-3.0103, match.asGiven().flightLossDb(), 5e-5);
    assertEquals(-3.0103, match.inverted().flightLossDb(), 5e-5);
    assertEquals(match.asGiven().delayMs(), -match.inverted().delayMs(), 1e-6);
    assertFalse(match.inversionAdvised());
  }

  @Test
  void aSubsonicFilterIsMadeUpForByPhaseAndNotByItsGroupDelay() {
    AnalogFilter subsonic = filter(Kind.BUTTERWORTH, 4, 35).highPass();
    double groupDelay = subsonic.groupDelayMs(80);
    assertEquals(2.502, groupDelay, 5e-4);
    DoubleFunction<Phasor> lower = f -> LOW.apply(f).times(subsonic.at(f));
    PhaseMatch match = PhaseMatch.of(lower, List.of(HIGH), 80, true);
    assertEquals(-2.11, match.asGiven().flightLossDb(), 0.005);
    assertEquals(2.282, match.asGiven().delayMs(), 0.001);
    assertEquals(-0.589, match.asGiven().lossDb(), 0.001);
    // At 80 Hz alone the filter leads by 67.5 degrees, of which 20·lg cos 33.75° is left.
    BothSides atCrossover =
        BothSides.of(80, lower.apply(80), HIGH.apply(80), HIGH.apply(80).modulus());
    assertEquals(67.5, subsonic.phaseDeg(80), 0.05);
    assertEquals(-1.60, atCrossover.lossDb(0), 0.005);
    // Set early by the group delay, another 72 degrees, it loses 9.2 dB there.
    assertEquals(-9.22, atCrossover.lossDb(-groupDelay), 0.005);
  }

  @Test
  void uppersThatCancelLeaveNothingToMatch() {
    DoubleFunction<Phasor> against = f -> HIGH.apply(f).times(-1);
    PhaseMatch match = PhaseMatch.of(LOW, List.of(HIGH, against), 80, true);
    assertEquals(0, match.asGiven().delayMs(), 0);
    // At 113 Hz the low-pass of −14 dB is a sixth of what three in phase would give.
    assertEquals(match.asGiven().flightLossDb(), match.asGiven().lossDb(), 1e-9);
    assertFalse(match.inversionAdvised());
  }

  @Test
  void silenceLosesNothing() {
    DoubleFunction<Phasor> silent = f -> new Phasor(0, 0);
    assertEquals(0, PhaseMatch.of(silent, List.of(HIGH), 80, true).asGiven().lossDb(), 1e-9);
    PhaseMatch.Setting nothing = PhaseMatch.of(silent, List.of(silent), 80, true).asGiven();
    assertEquals(new PhaseMatch.Setting(0, 0, 0, false), nothing);
  }

  @Test
  void withoutAHighPassTheUpperOnePlaysTwoOctavesDown() {
    DoubleFunction<Phasor> all = f -> Phasor.ONE;
    DoubleFunction<Phasor> onlyDeep = f -> f < 30 ? new Phasor(-1, 0) : Phasor.ONE;
    assertEquals(0, PhaseMatch.of(onlyDeep, List.of(all), 80, true).asGiven().flightLossDb(), 1e-9);
    assertEquals(-100, PhaseMatch.of(onlyDeep, List.of(all), 80, false).asGiven().flightLossDb());
  }

  @Test
  void severalPlacesAreJudgedByTheWorse() {
    DoubleFunction<Phasor> late = f -> LOW.apply(f).times(Phasor.ofPolar(1, -0.36 * f * 2));
    DoubleFunction<Phasor> early = f -> LOW.apply(f).times(Phasor.ofPolar(1, 0.36 * f * 1));
    PhaseMatch match =
        PhaseMatch.of(
            List.of(
                new Meeting(late, List.of(HIGH), 80, true),
                new Meeting(early, List.of(HIGH), 80, true)));
    PhaseMatch here = PhaseMatch.of(late, List.of(HIGH), 80, true);
    assertEquals(here.asGiven().flightLossDb(), match.asGiven().flightLossDb(), 1e-12);
    // Best would be the middle, half a millisecond earlier; 0.05 dB allow a little less.
    assertTrue(match.asGiven().delayMs() > -0.5 && match.asGiven().delayMs() < -0.3);
  }
}
