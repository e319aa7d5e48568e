package org.footwell.signal;

import org.footwell.physics.OctaveFractions;

/**
 * Means of a quantity over bands of frequency, such as of |X|² over third octaves. A bin counts with
 * the part of it that lies in the band, so that a white spectrum has the same mean in every band.
 */
public final class BandMeans {

  private final double[] sums;
  private final double widthHz;

  /**
   * Prepares the sums.
   *
   * @param values one value a bin, bin 0 at 0 Hz and the last at half the rate
   */
  public BandMeans(double[] values, double rateHz) {
    widthHz = rateHz / (2 * (values.length - 1));
    sums = new double[values.length + 1];
    for (int k = 0; k < values.length; k++) {
      sums[k + 1] = sums[k] + values[k];
    }
  }

  /** The mean between two frequencies in Hz, the second above the first. */
  public double between(double lowHz, double highHz) {
    return (upTo(highHz) - upTo(lowHz)) * widthHz / (highHz - lowHz);
  }

  /** The means over fractions of an octave around frequencies in Hz; edges at mid·G^(±1/(2·b)). */
  public double[] octaveFractions(double[] midHz, double perOctave) {
    double half = Math.pow(OctaveFractions.RATIO, 0.5 / perOctave);
    double[] means = new double[midHz.length];
    for (int i = 0; i < means.length; i++) {
      means[i] = between(midHz[i] / half, midHz[i] * half);
    }
    return means;
  }

  /** Sum of the bins from 0 Hz to a frequency, each reaching half a bin to either side. */
  private double upTo(double frequencyHz) {
    double place = Math.max(0, Math.min(sums.length - 1, frequencyHz / widthHz + 0.5));
    int below = Math.min((int) place, sums.length - 2);
    return sums[below] + (place - below) * (sums[below + 1] - sums[below]);
  }
}
