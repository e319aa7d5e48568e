package org.footwell.signal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import org.footwell.calculation.DeadlinePassed;
import org.junit.jupiter.api.Test;

class SignalTest {

  @Test
  void aTransformHoldsSoManySamples() {
    assertEquals(4, Spectrum.sizeFor(1));
    assertEquals(64, Spectrum.sizeFor(64));
    assertEquals(128, Spectrum.sizeFor(65));
  }

  @Test
  void anImpulseHasAFlatSpectrumAndADelayTurnsIt() {
    Spectrum spectrum = Spectrum.of(new double[] {0, 1}, 8);
    double[] ones = new double[5];
    Arrays.fill(ones, 1);
    assertArrayEquals(ones, spectrum.powers(), 1e-12);
    assertEquals(Math.cos(-Math.PI / 4), spectrum.re(1), 1e-12);
    assertEquals(Math.sin(-Math.PI / 4), spectrum.im(1), 1e-12);
  }

  @Test
  void productAndQuotientAreConvolutionAndItsUndoing() {
    Spectrum one = Spectrum.of(new double[] {1, 2, 3}, 8);
    Spectrum other = Spectrum.of(new double[] {1, 0.5}, 8);
    double[] convolved = one.times(other).signal();
    assertArrayEquals(new double[] {1, 2.5, 4, 1.5, 0, 0, 0, 0}, convolved, 1e-12);
    double[] undone = one.times(other).over(other, 0).signal();
    assertArrayEquals(new double[] {1, 2, 3, 0, 0, 0, 0, 0}, undone, 1e-12);
  }

  @Test
  void aSineHasAnEnvelopeOfOne() {
    double[] sine = new double[64];
    Arrays.setAll(sine, n -> Math.sin(2 * Math.PI * 5 * n / 64));
    for (double value : Spectrum.of(sine, 64).analytic().envelope()) {
      assertEquals(1, value, 1e-12);
    }
  }

  @Test
  void theTopOfAParabolaIsBetweenItsPoints() {
    // 1 − (x − 0.2)² at −1, 0 and 1.
    assertEquals(0.2, AnalyticSignal.parabolicOffset(1 - 1.44, 1 - 0.04, 1 - 0.64), 1e-12);
    assertEquals(0, AnalyticSignal.parabolicOffset(1, 1, 1), 0);
  }

  @Test
  void aGateIsOpenBetweenItsFades() {
    double[] gate = Window.gate(10, 2, 4);
    assertEquals(0, gate[0], 0);
    assertEquals(0.5, gate[1], 1e-12);
    assertArrayEquals(new double[] {1, 1, 1, 1}, Arrays.copyOfRange(gate, 2, 6), 0);
    assertEquals(0.5, gate[7], 1e-12);
    assertEquals(0, gate[9], 0);
  }

  @Test
  void aPassBandLetsHalfThroughAtItsEdges() {
    PassBand band = new PassBand(100, 1600);
    assertEquals(0.5, band.at(100), 1e-12);
    assertEquals(0.5, band.at(1600), 1e-12);
    assertEquals(1, band.at(400), 0);
    assertEquals(0, band.at(80), 0);
    assertEquals(0, band.at(0), 0);
    assertEquals(400, band.middleHz(), 1e-9);
  }

  @Test
  void aThirdOctaveOfASineHoldsAllOfIt() {
    double[] sine = new double[4800];
    Arrays.setAll(sine, n -> Math.sin(2 * Math.PI * 1000 * n / 48_000));
    Spectrum spectrum = Spectrum.of(sine, 8192);
    double[] energies =
        BandPower.octaveFractions(spectrum, 48_000, new double[] {794.328, 1000, 1258.925}, 3);
    // But for what the sudden ends of the sine spread.
    assertEquals(2400, energies[1], 24);
    assertTrue(energies[0] < 12 && energies[2] < 12, Arrays.toString(energies));
  }

  @Test
  void theMeanAroundABinOfAConstantIsTheConstant() {
    double[] fives = new double[100];
    Arrays.fill(fives, 5);
    assertArrayEquals(fives, BandPower.smoothed(fives, 3), 1e-12);
  }

  @Test
  void aMinimumPhaseResponseBecomesItself() {
    // 1 + 0.5·z⁻¹ has its zero within the unit circle.
    Spectrum response = Spectrum.of(new double[] {1, 0.5}, 256);
    double[] logarithms = new double[response.bins()];
    Arrays.setAll(logarithms, k -> 0.5 * Math.log(response.power(k)));
    double[] found = MinimumPhase.of(logarithms).signal();
    assertEquals(1, found[0], 1e-12);
    assertEquals(0.5, found[1], 1e-12);
    assertEquals(0, found[2], 1e-12);
  }

  @Test
  void aSweepThatWasDelayedAndHalvedGivesADelayedHalf() {
    ExponentialSweep sweep = new ExponentialSweep(100, 20_000, 0.25);
    double[] played = sweep.signal(48_000);
    double[] recorded = new double[played.length + 2000];
    for (int n = 0; n < played.length; n++) {
      recorded[n + 300] = -0.5 * played[n];
    }
    double[] response =
        new SweepDeconvolution(sweep, 48_000, recorded.length, () -> {}).response(recorded);
    assertEquals(2000, response.length);
    int at = 0;
    double sum = 0;
    for (int n = 0; n < response.length; n++) {
      at = Math.abs(response[n]) > Math.abs(response[at]) ? n : at;
      sum += response[n];
    }
    assertEquals(300, at);
    // The peak of an impulse limited to the sweep's range is the share of the range in the whole;
    // its edges count by half, a quarter of an octave inside.
    assertEquals(-0.5 * (20_000 / 1.189 - 100 * 1.189) / 24_000, response[at], 0.005);
    assertEquals(0, sum, 0.02);
  }

  @Test
  void whatDistortionAddsToASweepDoesNotComeAfterTheDirectSound() {
    ExponentialSweep sweep = new ExponentialSweep(50, 10_000, 0.5);
    double[] played = sweep.signal(48_000);
    double[] recorded = new double[played.length + 4800];
    for (int n = 0; n < played.length; n++) {
      recorded[n] = played[n] + 0.3 * played[n] * played[n];
    }
    double[] clean = new double[recorded.length];
    System.arraycopy(played, 0, clean, 0, played.length);
    SweepDeconvolution deconvolution =
        new SweepDeconvolution(sweep, 48_000, recorded.length, () -> {});
    double[] distorted = deconvolution.response(recorded);
    double[] pure = deconvolution.response(clean);
    for (int n = 100; n < 4000; n++) {
      assertEquals(pure[n], distorted[n], 0.01, "at " + n);
    }
  }

  /** A transform can take a tenth of a second: who has no time left must not wait for five of them. */
  @Test
  void aDivisionEndsBetweenItsTransforms() {
    ExponentialSweep sweep = new ExponentialSweep(100, 20_000, 0.25);
    double[] recorded = new double[14_000];
    AtomicInteger left = new AtomicInteger(Integer.MAX_VALUE);
    Runnable inTime =
        () -> {
          if (left.getAndDecrement() == 0) {
            throw new DeadlinePassed();
          }
        };
    SweepDeconvolution prepared = new SweepDeconvolution(sweep, 48_000, recorded.length, inTime);
    // Preparing takes three transforms, a response two.
    assertTrue(Integer.MAX_VALUE - left.get() >= 3);
    left.set(1);
    assertThrows(DeadlinePassed.class, () -> prepared.response(recorded));
    for (int times = 0; times < 3; times++) {
      left.set(times);
      assertThrows(
          DeadlinePassed.class,
          () -> new SweepDeconvolution(sweep, 48_000, recorded.length, inTime));
    }
  }
}
