package org.footwell.signal;

/** The noise of a response by frequency, of its quietest eighth. */
public final class NoiseFloor {

  private static final int PARTS = 8;
  private static final double SMOOTHED_PER_OCTAVE = 1.5;

  /** Longest piece that is analysed, s: enough for 20 Hz. */
  private static final double LONGEST_S = 0.25;

  private final double[] density;
  private final double binHz;

  private NoiseFloor(double[] density, double binHz) {
    this.density = density;
    this.binHz = binHz;
  }

  /** How long it looks at a response, s. */
  public static double lengthS(double[] response, double rateHz) {
    return Math.min(LONGEST_S, response.length / rateHz / PARTS);
  }

  /** Noise of a response in samples at a rate in Hz. */
  public static NoiseFloor of(double[] response, double rateHz) {
    int length = response.length / PARTS;
    int quietest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int part = 0; part < PARTS; part++) {
      double energy = 0;
      for (int i = part * length; i < (part + 1) * length; i++) {
        energy += response[i] * response[i];
      }
      if (energy < least) {
        least = energy;
        quietest = part;
      }
    }
    int used = Math.min(length, (int) (LONGEST_S * rateHz));
    double[] window = Window.HANN.periodic(used);
    double[] piece = new double[used];
    double weight = 0;
    for (int i = 0; i < used; i++) {
      piece[i] = response[quietest * length + i] * window[i];
      weight += window[i] * window[i];
    }
    Spectrum spectrum = Spectrum.of(piece, Spectrum.sizeFor(used));
    double[] density = BandPower.smoothed(spectrum.powers(), SMOOTHED_PER_OCTAVE);
    for (int k = 0; k < density.length; k++) {
      density[k] /= weight;
    }
    return new NoiseFloor(density, rateHz / spectrum.size());
  }

  /** |X|² of noise for a sum of squared window factors of 1, for every bin of a spectrum. */
  public double[] densities(int bins, double rateHz) {
    double[] at = new double[bins];
    double width = rateHz / (2 * (bins - 1)) / binHz;
    for (int k = 0; k < bins; k++) {
      double place = k * width;
      int below = Math.min((int) place, density.length - 1);
      int above = Math.min(below + 1, density.length - 1);
      at[k] = density[below] + (place - below) * (density[above] - density[below]);
    }
    return at;
  }

  /** RMS of noise after a filter, given by its factors on the bins. */
  public static double rms(double[] densities, double[] factors) {
    double sum = 0;
    for (int k = 1; k < densities.length - 1; k++) {
      sum += densities[k] * factors[k] * factors[k];
    }
    return Math.sqrt(sum / (densities.length - 1));
  }
}
