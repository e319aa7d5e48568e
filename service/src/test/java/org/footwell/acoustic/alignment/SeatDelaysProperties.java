package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.Setup.at;
import static org.footwell.acoustic.alignment.Setup.filter;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.Processor;

class SeatDelaysProperties {

  @Property(tries = 200)
  void delaysAreNeverNegativeAndOneIsZero(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 8) int channels,
      @ForAll @IntRange(min = 1, max = 4) int seats) {
    double[] delays = random(seed, channels, seats, 0).delays();
    assertEquals(0, Arrays.stream(delays).min().orElseThrow());
  }

  @Property(tries = 200)
  void oneSeatHearsEverythingAtOnce(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 32) int channels) {
    assertEquals(0, random(seed, channels, 1, 0).result().spreadMs(), 1e-12);
  }

  @Property(tries = 200)
  void movingAllPositionsTogetherChangesNothing(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 4) int seats,
      @ForAll @DoubleRange(min = -10, max = 10) double by) {
    assertArrayEquals(
        random(seed, 5, seats, 0).delays(), random(seed, 5, seats, by).delays(), 1e-9);
  }

  @Property(tries = 200)
  void twoEqualSeatsInAMirrorGetMirroredDelays(@ForAll long seed) {
    Random random = new Random(seed);
    Setup setup = new Setup();
    for (int pair = 0; pair < 4; pair++) {
      double x = random.nextDouble() * 4 - 2;
      double y = random.nextDouble();
      double z = random.nextDouble() * 0.5;
      setup.channel("left " + pair, at(x, y, z)).channel("right " + pair, at(x, -y, z));
    }
    setup.seat("driver", at(0, 0.4, 1)).seat("passenger", at(0, -0.4, 1));
    double[] delays = setup.delays();
    for (int pair = 0; pair < 4; pair++) {
      assertEquals(delays[2 * pair], delays[2 * pair + 1], 1e-9);
    }
  }

  @Property(tries = 200)
  void delaysScaleWithTheDistances(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 4) int seats,
      @ForAll @DoubleRange(min = 0.5, max = 3) double factor) {
    double[][] metres = metres(new Random(seed), 5, seats);
    double[][] scaled = new double[5][];
    for (int c = 0; c < 5; c++) {
      scaled[c] = Arrays.stream(metres[c]).map(d -> factor * d).toArray();
    }
    double[] expected =
        Arrays.stream(Setup.tape(metres).delays()).map(delay -> factor * delay).toArray();
    assertArrayEquals(expected, Setup.tape(scaled).delays(), 1e-8);
  }

  @Property(tries = 200)
  void theSameChainDelayForAllChangesNothing(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 3) int seats,
      @ForAll @DoubleRange(min = 0, max = 100) double chain) {
    Setup with = random(seed, 4, seats, 0);
    for (int c = 0; c < 4; c++) {
      with.chain(c, chain);
    }
    assertArrayEquals(random(seed, 4, seats, 0).delays(), with.delays(), 1e-9);
  }

  @Property(tries = 100)
  void theOrderOfTheChannelsDoesNotMatter(@ForAll long seed) {
    double[][] metres = metres(new Random(seed), 6, 3);
    double[][] reversed = new double[6][];
    for (int c = 0; c < 6; c++) {
      reversed[c] = metres[5 - c];
    }
    double[] delays = Setup.tape(metres).delays();
    double[] others = Setup.tape(reversed).delays();
    for (int c = 0; c < 6; c++) {
      assertEquals(delays[c], others[5 - c], 1e-9);
    }
  }

  @Property(tries = 100)
  void aLinkwitzRileyPairNeedsNoDelay(
      @ForAll @IntRange(min = 1, max = 4) int half,
      @ForAll @DoubleRange(min = 20, max = 10000) double corner) {
    Filter filter = filter(Kind.LINKWITZ_RILEY, 2 * half, corner);
    Setup setup = Setup.tape(new double[][] {{1}, {1}});
    // Orders 2 and 6 need one way inverted.
    setup.filters(0, null, filter, half % 2 == 0 ? 1 : -1).filters(1, filter, null, null);
    setup.crossover("c0", "c1", corner);
    assertArrayEquals(new double[] {0, 0}, setup.delays(), 0);
  }

  @Property(tries = 100)
  void swappingLeftAndRightSwapsTheDelays(@ForAll long seed) {
    double[] delays = stereo(seed, 1, 0).delays();
    double[] mirrored = stereo(seed, -1, 0).delays();
    assertArrayEquals(
        new double[] {delays[0], delays[2], delays[1], delays[4], delays[3]}, mirrored, 1e-9);
  }

  @Property(tries = 100)
  void theSameChainDelayForAllChangesNoMatch(
      @ForAll long seed, @ForAll @DoubleRange(min = 0, max = 100) double chain) {
    assertArrayEquals(stereo(seed, 1, 0).delays(), stereo(seed, 1, chain).delays(), 1e-6);
  }

  @Property(tries = 100)
  void aChannelThatIsLateAlreadyWaitsAsMuchLess(
      @ForAll long seed, @ForAll @DoubleRange(min = 0, max = 20) double late) {
    Setup setup = stereo(seed, 1, 0);
    double[] before = setup.delays();
    double[] after = setup.chain(0, late).delays();
    for (int c = 1; c < 5; c++) {
      assertEquals(before[0] - before[c] - late, after[0] - after[c], 1e-6);
    }
  }

  /**
   * A subwoofer with a subsonic filter under two midranges of any polarity, those under two tweeters;
   * side −1 is the mirror image.
   */
  private static Setup stereo(long seed, int side, double chain) {
    Random random = new Random(seed);
    Setup setup = new Setup();
    setup.channel("sub", at(-1.5, side * random.nextDouble() * 0.5, 0.3));
    for (String row : new String[] {"mid", "tweeter"}) {
      double forward = random.nextDouble();
      double[] out = {0.5 + random.nextDouble() / 2, -0.5 - random.nextDouble() / 2};
      double left = side == 1 ? out[0] : -out[1];
      double right = side == 1 ? out[1] : -out[0];
      setup.channel("left " + row, at(forward, left, 0.5));
      setup.channel("right " + row, at(forward, right, 0.5));
    }
    double high = 40 + 60 * random.nextDouble();
    double middle = 150 + 400 * random.nextDouble();
    setup.filters(0, filter(Kind.BUTTERWORTH, 3, 25), filter(Kind.BUTTERWORTH, 4, 80), null);
    for (int c = 1; c < 3; c++) {
      setup.filters(c, filter(Kind.BUTTERWORTH, 4, high), filter(Kind.BESSEL, 2, middle), 1);
      setup.filters(c + 2, filter(Kind.BUTTERWORTH, 3, middle), null, -1);
    }
    setup.crossover("sub", "left mid", 75).crossover("sub", "right mid", 75);
    setup.crossover("left mid", "left tweeter", middle);
    setup.crossover("right mid", "right tweeter", middle);
    setup.seat("driver", at(0, side * 0.4, 1.1));
    for (int c = 0; c < 5; c++) {
      setup.chain(c, chain);
    }
    return setup;
  }

  @Property(tries = 200)
  void roundingIsNeverOffByMoreThanHalfAStep(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 16) int step) {
    Setup setup = random(seed, 6, 2, 0);
    setup.asked.processor(new Processor(44100.0, (double) step, null));
    for (SeatDelaysResult.ChannelDelay channel : setup.result().channels()) {
      assertTrue(Math.abs(channel.roundingErrorUs()) <= 1e6 * step / 44100 / 2 + 1e-6);
      assertEquals(0, channel.delaySamples() % step);
      assertTrue(channel.trimDb() <= 0);
    }
  }

  static double[][] metres(Random random, int channels, int seats) {
    double[][] metres = new double[channels][seats];
    for (double[] row : metres) {
      Arrays.setAll(row, s -> 0.3 + 2.5 * random.nextDouble());
    }
    return metres;
  }

  /** Positions at random in a cabin, all moved by the same. */
  private static Setup random(long seed, int channels, int seats, double by) {
    Random random = new Random(seed);
    Setup setup = new Setup();
    for (int c = 0; c < channels; c++) {
      setup.channel(
          "c" + c,
          at(
              by + 4 * random.nextDouble() - 2,
              by + 1.6 * random.nextDouble() - 0.8,
              by + 0.6 * random.nextDouble()));
    }
    for (int s = 0; s < seats; s++) {
      setup.seat("s" + s, at(by - 0.9 * s, by + 0.4 - 0.8 * (s % 2), by + 1.1));
      setup.weight(s, 1 + random.nextInt(3));
    }
    return setup;
  }
}
