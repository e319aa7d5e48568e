package org.footwell.signal;

import org.footwell.physics.OctaveFractions;

/** Power of a spectrum by bands: fractional octaves, and the mean around each bin. */
public final class BandPower {

  private BandPower() {}

  /**
   * Mean of a quantity within a fraction of an octave around each bin.
   *
   * @param values one value a bin, such as {@link Spectrum#powers}
   * @param perOctave fractions an octave has
   */
  public static double[] smoothed(double[] values, double perOctave) {
    double[] sums = new double[values.length + 1];
    for (int k = 0; k < values.length; k++) {
      sums[k + 1] = sums[k] + values[k];
    }
    double half = Math.pow(2, 0.5 / perOctave);
    double[] smoothed = new double[values.length];
    for (int k = 0; k < values.length; k++) {
      int from = (int) (k / half);
      int to = Math.min(values.length, (int) Math.ceil(k * half) + 1);
      smoothed[k] = (sums[to] - sums[from]) / (to - from);
    }
    return smoothed;
  }

  /**
   * Energy of the signal between two frequencies by Parseval's theorem: the sum of squares of its
   * samples, as far as it lies in the band. A bin counts with the part of it that lies in the band.
   */
  public static double energy(Spectrum spectrum, double rateHz, double lowHz, double highHz) {
    double width = rateHz / spectrum.size();
    double sum = 0;
    int first = Math.max(0, (int) Math.floor(lowHz / width - 0.5));
    int last = Math.min(spectrum.bins() - 1, (int) Math.ceil(highHz / width + 0.5));
    for (int k = first; k <= last; k++) {
      double from = Math.max(lowHz, (k - 0.5) * width);
      double to = Math.min(highHz, (k + 0.5) * width);
      if (to > from) {
        boolean single = k == 0 || k == spectrum.bins() - 1;
        // The halves of the first and the last bin beyond the range are the mirror's.
        double part = Math.min(1, (to - from) / (single ? width / 2 : width));
        sum += part * (single ? 1 : 2) * spectrum.power(k);
      }
    }
    return sum / spectrum.size();
  }

  /**
   * Energy in bands of a fraction of an octave around mid-band frequencies in Hz, as {@link #energy}.
   *
   * @param perOctave 1 for octaves, 3 for third octaves; edges at mid·G^(±1/(2·perOctave))
   */
  public static double[] octaveFractions(
      Spectrum spectrum, double rateHz, double[] midHz, int perOctave) {
    double half = Math.pow(OctaveFractions.RATIO, 0.5 / perOctave);
    double[] energies = new double[midHz.length];
    for (int i = 0; i < midHz.length; i++) {
      energies[i] = energy(spectrum, rateHz, midHz[i] / half, midHz[i] * half);
    }
    return energies;
  }
}
