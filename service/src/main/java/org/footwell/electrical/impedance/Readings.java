package org.footwell.electrical.impedance;

import java.util.Arrays;
import java.util.Optional;

/** A table of readings, and what can be read off it without a model. */
final class Readings {

  /** A peak must stand this much above both its sides; noise does not. */
  private static final double PEAK = 1.15;

  private final double[] frequencies;
  private final double[] moduli;
  private final double[] phases;

  /**
   * As measured.
   *
   * @param frequencies Hz, rising
   * @param moduli ohm
   * @param phasesDeg degrees; NaN where none was measured
   */
  Readings(double[] frequencies, double[] moduli, double[] phasesDeg) {
    this.frequencies = frequencies;
    this.moduli = moduli;
    this.phases = Arrays.stream(phasesDeg).map(Math::toRadians).toArray();
  }

  int count() {
    return frequencies.length;
  }

  double frequencyHz(int i) {
    return frequencies[i];
  }

  double modulus(int i) {
    return moduli[i];
  }

  boolean hasPhase(int i) {
    return !Double.isNaN(phases[i]);
  }

  /** Radians; NaN where none was measured. */
  double phase(int i) {
    return phases[i];
  }

  /** The index of the resonance; none when the table has no peak. */
  Optional<Integer> resonance() {
    return peak(-1);
  }

  /** Frequency in Hz of a second peak that stands out like a resonance, if there is one. */
  Optional<Double> secondPeak(int first) {
    return peak(first).map(i -> frequencies[i]);
  }

  /** The reading that stands out most above both its sides, leaving out one. */
  private Optional<Integer> peak(int except) {
    int best = -1;
    double most = PEAK;
    for (int i = 1; i < moduli.length - 1; i++) {
      double rise = moduli[i] / higherSide(i);
      if (i != except && rise > most) {
        most = rise;
        best = i;
      }
    }
    return best < 0 ? Optional.empty() : Optional.of(best);
  }

  /** Of the lowest moduli on both sides of a peak the higher one. */
  double higherSide(int peak) {
    return Math.max(side(peak, -1), side(peak, 1));
  }

  /** The lowest modulus on one side before a higher one is met. */
  private double side(int peak, int step) {
    double lowest = moduli[peak];
    for (int i = peak + step; i >= 0 && i < moduli.length; i += step) {
      if (moduli[i] > moduli[peak] || (moduli[i] == moduli[peak] && step < 0)) {
        break;
      }
      lowest = Math.min(lowest, moduli[i]);
    }
    return lowest;
  }

  /** The lowest modulus above the peak. */
  double lowestAbove(int peak) {
    double lowest = moduli[peak];
    for (int i = peak; i < moduli.length; i++) {
      lowest = Math.min(lowest, moduli[i]);
    }
    return lowest;
  }

  /** The lowest modulus of all. */
  double lowest() {
    double lowest = moduli[0];
    for (double modulus : moduli) {
      lowest = Math.min(lowest, modulus);
    }
    return lowest;
  }

  /** How wide the peak is at a modulus, Hz: to the first readings below it on both sides. */
  double width(int peak, double modulus) {
    int low = peak;
    while (low > 0 && moduli[low] > modulus) {
      low--;
    }
    int high = peak;
    while (high < moduli.length - 1 && moduli[high] > modulus) {
      high++;
    }
    return frequencies[high] - frequencies[low];
  }

  double firstHz() {
    return frequencies[0];
  }

  double lastHz() {
    return frequencies[frequencies.length - 1];
  }

  double lastModulus() {
    return moduli[moduli.length - 1];
  }

  int phaseCount() {
    int count = 0;
    for (int i = 0; i < phases.length; i++) {
      count += hasPhase(i) ? 1 : 0;
    }
    return count;
  }
}
