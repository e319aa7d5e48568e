package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.Setup.filter;
import static org.footwell.acoustic.alignment.Setup.lr4;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.acoustic.alignment.SeatDelaysResult.Match;
import org.footwell.acoustic.alignment.SeatDelaysResult.Upper;
import org.footwell.calculation.Finding;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.SeatBuilder;
import org.junit.jupiter.api.Test;

/** Where channels meet: which are moved for what, and what is said of it. */
class BassMatchesTest {

  private static final Filter SUBSONIC = filter(Kind.BUTTERWORTH, 4, 35);

  /** Subwoofer c0 with a subsonic filter, and uppers c1 … over it at 80 Hz, all at these places. */
  private static Setup subwoofer(double[]... metres) {
    Setup setup = Setup.tape(metres).filters(0, SUBSONIC, lr4(80), null);
    for (int upper = 1; upper < metres.length; upper++) {
      setup.filters(upper, lr4(80), null, null).crossover("c0", "c" + upper, 80);
    }
    return setup;
  }

  private static Setup pair(Filter filter, double hz) {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.0}});
    return setup
        .filters(0, null, filter, null)
        .filters(1, filter, null, null)
        .crossover("c0", "c1", hz);
  }

  @Test
  void aMatchedPairStaysAtFlightTime() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.7}});
    setup.filters(0, null, lr4(80), null).filters(1, lr4(80), null, null);
    setup.crossover("c0", "c1", 80);
    SeatDelaysResult result = setup.result();
    assertArrayEquals(new double[] {700 / 343.2, 0}, setup.delays(), 1e-12);
    Match match = result.matches().get(0);
    assertEquals("c0", match.lower());
    assertEquals(List.of(new Upper("c1", 80)), match.uppers());
    assertEquals("s0", match.seat());
    assertEquals(0, match.asSet().movedMs(), 0);
    assertEquals(0, match.asSet().largestLossDb(), 1e-9);
    assertEquals(0, match.asSet().flightLossDb(), 1e-9);
    assertEquals(0, result.crossovers().get(0).phaseErrorDeg(), 1e-9);
    assertEquals(List.of("trim-distance-law"), setup.codes());
  }

  @Test
  void aSubwooferWithASubsonicFilterIsMovedAndItsFlightTimeStandsBeside() {
    Setup setup = subwoofer(new double[] {2.4}, new double[] {1.2});
    SeatDelaysResult result = setup.result();
    double path = 1200 / 343.2;
    SeatDelaysResult.ChannelDelay sub = result.channels().get(0);
    SeatDelaysResult.ChannelDelay front = result.channels().get(1);
    assertEquals(0, sub.flightDelayMs(), 1e-12);
    assertEquals(path, front.flightDelayMs(), 1e-9);
    // The subwoofer comes 2.282 ms later against the front, which waits as much less.
    assertEquals(0, sub.delayMs(), 0);
    assertEquals(path - 2.282, front.delayMs(), 0.001);
    Match match = result.matches().get(0);
    assertEquals(2.282, match.asSet().movedMs(), 0.001);
    assertEquals(-0.589, match.asSet().largestLossDb(), 0.001);
    assertEquals(-2.1146, match.asSet().flightLossDb(), 0.0001);
    assertEquals(-3.381, match.inverted().movedMs(), 0.001);
    assertEquals(-0.089, match.inverted().largestLossDb(), 0.001);
    // It would lose 0.5 dB less, farther from flight time: no reason to turn it.
    assertFalse(match.inversionAdvised());
    // What was moved for the crossover is no spread.
    assertEquals(0, result.spreadMs(), 1e-12);
  }

  @Test
  void aChannelThatMustComeEarlierMakesTheOthersWait() {
    Setup setup = subwoofer(new double[] {2.4}, new double[] {1.2}).chain(1, 9);
    setup.filters(0, SUBSONIC, lr4(80), -1);
    double flight = 9 - 1200 / 343.2;
    // 3.381 ms earlier than flight time leaves 2.12 ms.
    assertEquals(flight - 3.381, setup.delays()[0], 0.001);
    assertEquals(0, setup.delays()[1], 0);
    setup.chain(1, 0);
    assertEquals(0, setup.delays()[0], 0);
    assertEquals(1200 / 343.2 + 3.381, setup.delays()[1], 0.001);
    assertEquals(1200 / 343.2, setup.result().channels().get(1).flightDelayMs(), 1e-9);
  }

  @Test
  void allUppersOfAMonoSubwooferAreHeardTogether() {
    Setup setup = subwoofer(new double[] {2.0}, new double[] {1.0}, new double[] {1.5});
    List<Match> matches = setup.result().matches();
    assertEquals(1, matches.size());
    assertEquals(List.of(new Upper("c1", 80), new Upper("c2", 80)), matches.get(0).uppers());
    assertEquals(2.685, matches.get(0).asSet().movedMs(), 0.001);
    assertEquals(-3.159, matches.get(0).asSet().flightLossDb(), 0.001);
  }

  @Test
  void aLowerChannelOfOneSideGoesWithItsUpperOne() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.4}, {0.8}, {1.3}});
    setup.filters(0, SUBSONIC, lr4(80), null).filters(2, lr4(80), null, null);
    setup.filters(1, null, lr4(80), null).filters(3, lr4(80), null, null);
    setup.crossover("c0", "c2", 80).crossover("c1", "c3", 80);
    List<Match> matches = setup.result().matches();
    assertEquals(2.282, matches.get(0).asSet().movedMs(), 0.001);
    assertEquals(0, matches.get(1).asSet().movedMs(), 0);
  }

  @Test
  void crossoversOfOneSubwooferAtSeveralFrequenciesCountTogether() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.0}, {1.0}});
    setup.filters(0, SUBSONIC, lr4(80), null);
    setup.filters(1, lr4(80), null, null).filters(2, lr4(120), null, null);
    setup.crossover("c0", "c1", 80);
    double alone = setup.result().matches().get(0).asSet().largestLossDb();
    setup.crossover("c0", "c2", 120);
    Match both = setup.result().matches().get(0);
    assertEquals(List.of(new Upper("c1", 80), new Upper("c2", 120)), both.uppers());
    assertTrue(both.asSet().largestLossDb() < alone);
    assertTrue(Math.abs(both.asSet().movedMs()) <= 500.0 / 120);
  }

  @Test
  void theSubwooferFollowsWhatIsAboveItFromTheTopDown() {
    // The middle channel is moved at 250 Hz first, and its low-pass lags at 80 Hz.
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.0}, {1.0}});
    setup.filters(0, null, lr4(80), null);
    setup.filters(1, lr4(80), lr4(250), null);
    setup.filters(2, filter(Kind.BUTTERWORTH, 2, 220), null, -1);
    setup.crossover("c0", "c1", 80).crossover("c1", "c2", 250);
    List<Match> matches = setup.result().matches();
    double middle = matches.get(1).asSet().movedMs();
    assertEquals(-0.170, middle, 0.001);
    // Through the low-pass of the middle channel 80 Hz come 1.86 ms late; 0.05 dB allow 0.3 less.
    double low = lr4(250).lowPass().phaseDeg(80) / -360 / 80 * 1000;
    assertEquals(1.858, low, 0.001);
    assertEquals(middle + low, matches.get(0).asSet().movedMs(), 0.4);
    assertTrue(matches.get(0).asSet().largestLossDb() > -0.1);
    setup.filters(1, lr4(80), null, null);
    setup.crossovers.remove(1);
    assertEquals(0, setup.result().matches().get(0).asSet().movedMs(), 0);
  }

  @Test
  void aboveTheFrequencyOfIncoherenceOnlyFlightTimesCount() {
    Setup setup = subwoofer(new double[] {1.0}, new double[] {1.0});
    setup.asked.incoherentAboveHz(79.0);
    assertArrayEquals(new double[] {0, 0}, setup.delays(), 0);
    assertEquals(List.of(), setup.result().matches());
    setup.asked.incoherentAboveHz(80.0);
    assertEquals(1, setup.result().matches().size());
    Setup high = pair(filter(Kind.LINKWITZ_RILEY, 2, 3000), 3000);
    assertArrayEquals(new double[] {0, 0}, high.delays(), 0);
    SeatDelaysResult.Crossover sum = high.result().crossovers().get(0);
    assertEquals(180, Math.abs(sum.phaseErrorDeg()), 1e-9);
    assertEquals(-100, sum.sumLossDb());
    assertEquals(
        List.of("crossover-out-of-phase", "polarity-would-mend", "trim-distance-law"),
        high.codes());
    high.filters(0, null, filter(Kind.LINKWITZ_RILEY, 2, 3000), -1);
    assertEquals(List.of("trim-distance-law"), high.codes());
  }

  @Test
  void theOtherPolarityIsAdvisedAndNotSet() {
    Setup setup = pair(filter(Kind.LINKWITZ_RILEY, 2, 80), 80);
    Match match = setup.result().matches().get(0);
    assertTrue(match.inversionAdvised());
    assertEquals(5.828, match.asSet().movedMs(), 0.001);
    assertEquals(5.828, setup.delays()[0], 0.001);
    Finding finding = setup.answer().findings().get(0);
    assertEquals("inversion-advised", finding.code());
    assertEquals("/crossovers/0", finding.pointer());
    assertEquals(List.of("inversion-advised", "trim-distance-law"), setup.codes());
    setup.filters(0, null, filter(Kind.LINKWITZ_RILEY, 2, 80), -1);
    assertEquals(0, setup.delays()[0], 0);
    assertEquals(0, setup.result().crossovers().get(0).sumLossDb(), 1e-9);
    assertEquals(List.of("trim-distance-law"), setup.codes());
    setup.filters(0, null, lr4(80), -1).filters(1, lr4(80), null, null);
    assertTrue(setup.codes().contains("inversion-advised"));
  }

  @Test
  void ofTwoUppersThatCancelTheInvertedOneIsFound() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.0}, {1.0}});
    setup.filters(0, null, lr4(80), null);
    setup.filters(1, lr4(80), null, null).filters(2, lr4(80), null, -1);
    setup.crossover("c0", "c1", 80).crossover("c0", "c2", 80);
    assertEquals(0, setup.delays()[0], 0);
    assertEquals(
        List.of("crossover-out-of-phase", "polarity-would-mend", "trim-distance-law"),
        setup.codes());
    assertEquals("/crossovers/1", setup.answer().findings().get(0).pointer());
  }

  @Test
  void aDelayAtTheEdgeOfTheWindowIsFound() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.0}});
    setup.filters(0, SUBSONIC, lr4(80), -1).crossover("c0", "c1", 80);
    Match match = setup.result().matches().get(0);
    assertTrue(match.asSet().atWindowEdge());
    Finding finding = setup.answer().findings().get(0);
    assertEquals("delay-at-window-edge", finding.code());
    assertEquals(6.25, finding.limit(), 1e-12);
    assertEquals(-6.23, finding.value(), 0.01);
    // Both polarities were tried, so neither is named a remedy of its own.
    assertFalse(setup.codes().contains("polarity-would-mend"));
  }

  @Test
  void theSeatThatCountsMostIsMatchedAtBothItsEars() {
    double[][] metres = {{2.0, 1.2}, {1.0, 1.8}};
    Setup driver = subwoofer(metres).weight(0, 2);
    Setup passenger = subwoofer(metres).weight(1, 2);
    assertEquals("s0", driver.result().matches().get(0).seat());
    assertEquals("s1", passenger.result().matches().get(0).seat());
    assertEquals(2.282, driver.result().matches().get(0).asSet().movedMs(), 0.001);
    assertEquals(2.282, passenger.result().matches().get(0).asSet().movedMs(), 0.001);
    Setup ears = new Setup();
    ears.channel("c0", Setup.at(0, 0.5, 0)).channel("c1", Setup.at(1.5, -1, 0));
    ears.seats.add(
        SeatBuilder.builder()
            .name("driver")
            .leftEar(Setup.at(0, -0.1, 0))
            .rightEar(Setup.at(0, -0.9, 0)));
    ears.filters(0, null, lr4(80), null).filters(1, lr4(80), null, null);
    ears.crossover("c0", "c1", 80);
    Match match = ears.result().matches().get(0);
    // No delay suits both; one ear alone would lose nothing.
    assertTrue(match.asSet().largestLossDb() < -0.5);
  }

  @Test
  void theGroupDelayOfALowPassIsNoDelay() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.0}});
    setup.filters(0, null, lr4(80), null);
    assertArrayEquals(new double[] {0, 0}, setup.delays(), 0);
    assertTrue(setup.codes().contains("crossover-not-stated"));
    setup.filters(0, null, lr4(3000), null);
    assertFalse(setup.codes().contains("crossover-not-stated"));
  }

  @Test
  void filtersThatAreNotGivenAreRemarkedOnWhereTheyCount() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.0}});
    setup.filters(1, null, null, null);
    assertEquals(List.of("trim-distance-law"), setup.codes());
    setup.crossover("c0", "c1", 80);
    Finding finding = setup.answer().findings().get(0);
    assertEquals("filters-not-given", finding.code());
    assertEquals("/channels/1", finding.pointer());
  }

  @Test
  void oddOrdersAreMovedUntilTheyAdd() {
    Match match = pair(filter(Kind.BUTTERWORTH, 3, 80), 80).result().matches().get(0);
    assertEquals(-3.0103, match.asSet().flightLossDb(), 5e-5);
    assertEquals(2.795, match.asSet().movedMs(), 0.001);
    assertEquals(-0.28, match.asSet().largestLossDb(), 0.005);
    assertFalse(match.inversionAdvised());
    SeatDelaysResult.Crossover high =
        pair(filter(Kind.BUTTERWORTH, 3, 3000), 3000).result().crossovers().get(0);
    // −135 minus 135 degrees is −270, which is 90.
    assertEquals(90, high.phaseErrorDeg(), 1e-9);
    assertEquals(-3.0103, high.sumLossDb(), 5e-5);
  }
}
