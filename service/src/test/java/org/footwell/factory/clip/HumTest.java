package org.footwell.factory.clip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.footwell.factory.clip.ClipPointResult.StepFigures;
import org.junit.jupiter.api.Test;

/** Hum of the mains in captures: named when seen, and only then. */
class HumTest {

  /** A tone of 0.4 with hum of these amplitudes at the multiples of a frequency, and noise. */
  private static ToneBench bench(double toneHz, double noise, double mainsHz, double... hum) {
    ToneBench bench = new ToneBench();
    Random random = new Random(3);
    float[] wave = new float[48_000];
    for (int n = 0; n < wave.length; n++) {
      double value = 0.4 * Math.sin(2 * Math.PI * toneHz * n / ToneBench.RATE_HZ);
      for (int k = 0; k < hum.length; k++) {
        value += hum[k] * Math.cos(2 * Math.PI * mainsHz * (k + 1) * n / ToneBench.RATE_HZ + k);
      }
      wave[n] = (float) (value + noise * random.nextGaussian());
    }
    return bench.step(1, wave);
  }

  @Test
  void humIsNamedWithItsFrequencyAndSize() {
    for (double mains : new double[] {50, 60}) {
      ToneBench bench = bench(410, 1e-4, mains, 0.01, 0, 0.004, 0, 0.002);
      StepFigures step = bench.first();
      assertEquals(mains, step.humHz());
      assertEquals(
          100 * Math.sqrt(0.01 * 0.01 + 0.004 * 0.004 + 0.002 * 0.002) / 0.4,
          step.humPercent(),
          0.01);
      assertTrue(bench.codes().contains("hum-seen"));
      assertTrue(step.clean());
    }
  }

  @Test
  void humOfRectifiersHasTwiceTheFrequencyOnly() {
    assertEquals(50, bench(410, 1e-4, 50, 0, 0.01, 0, 0.005).first().humHz());
    assertEquals(60, bench(410, 1e-4, 60, 0, 0.01, 0, 0.005).first().humHz());
  }

  @Test
  void aNetworkALittleOffIsStillNamed() {
    assertEquals(50, bench(410, 1e-4, 50.08, 0.01, 0.003).first().humHz());
    assertEquals(60, bench(410, 1e-4, 59.9, 0.01, 0.003).first().humHz());
  }

  @Test
  void noiseOrSilenceIsNoHum() {
    for (double noise : new double[] {0, 1e-5, 1e-3, 1e-2, 5e-2}) {
      for (double tone : new double[] {40, 97.3, 410, 997, 1000}) {
        ToneBench bench = bench(tone, noise, 50);
        assertNull(bench.first().humHz(), tone + " Hz with noise " + noise);
        assertFalse(bench.codes().contains("hum-seen"));
      }
    }
  }

  @Test
  void anotherLineIsNoHum() {
    assertNull(bench(410, 1e-4, 55, 0.01, 0.003).first().humHz());
    assertNull(bench(410, 1e-4, 73, 0.01, 0.003).first().humHz());
  }

  @Test
  void clippingIsNoHum() {
    for (double tone : new double[] {50, 60, 97.3, 100, 410}) {
      ToneBench bench = new ToneBench();
      bench.toneMadeHz = tone;
      assertNull(bench.step(1, 0.8, 0.4, 0.3).first().humHz(), tone + " Hz");
    }
  }

  @Test
  void aWeakHumIsAFigureButNotWorthAWord() {
    ToneBench bench = bench(410, 1e-6, 50, 0.0002);
    assertEquals(0.05, bench.first().humPercent(), 0.001);
    assertFalse(bench.codes().contains("hum-seen"));
  }
}
