package org.footwell.signal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class SignalProperties {

  private static double[] noise(long seed, int size) {
    Random random = new Random(seed);
    return random.doubles(size, -1, 1).toArray();
  }

  private static double energy(double[] signal) {
    double sum = 0;
    for (double value : signal) {
      sum += value * value;
    }
    return sum;
  }

  @Property(tries = 200)
  void energyIsTheSameInTimeAndFrequency(
      @ForAll @LongRange(min = 0, max = 1000) long seed,
      @ForAll @IntRange(min = 1, max = 3000) int samples) {
    double[] signal = noise(seed, samples);
    Spectrum spectrum = Spectrum.of(signal, Spectrum.sizeFor(samples));
    assertEquals(energy(signal), BandPower.energy(spectrum, 48_000, 0, 24_000), 1e-9 * samples);
  }

  @Property(tries = 200)
  void theSignalComesBackFromItsSpectrum(
      @ForAll @LongRange(min = 0, max = 1000) long seed,
      @ForAll @IntRange(min = 2, max = 11) int power) {
    double[] signal = noise(seed, 1 << power);
    assertArrayEquals(signal, Spectrum.of(signal, signal.length).signal(), 1e-12);
  }

  @Property(tries = 50)
  void betweenSamplesTheEnvelopeIsTheSameAsOnThem(
      @ForAll @LongRange(min = 0, max = 1000) long seed) {
    double[] band = new PassBand(2000, 8000).factors(129, 48_000);
    Spectrum spectrum = Spectrum.of(noise(seed, 256), 256).weighted(band);
    double[] envelope = spectrum.analytic().envelope();
    for (int n = 0; n < 256; n += 17) {
      assertEquals(envelope[n], spectrum.envelopeAt(n), 1e-12);
    }
  }

  @Property(tries = 50)
  void neighbouringBandsShareTheEnergyBetweenThem(
      @ForAll @LongRange(min = 0, max = 1000) long seed,
      @ForAll @IntRange(min = 100, max = 11_000) int edge) {
    Spectrum spectrum = Spectrum.of(noise(seed, 512), 512);
    double whole = BandPower.energy(spectrum, 48_000, 50, 12_000);
    double low = BandPower.energy(spectrum, 48_000, 50, edge);
    double high = BandPower.energy(spectrum, 48_000, edge, 12_000);
    assertEquals(whole, low + high, 1e-9);
  }
}
