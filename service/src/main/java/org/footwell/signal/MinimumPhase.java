package org.footwell.signal;

import org.footwell.calculation.Source;

/** The one causal, stable response of a magnitude whose inverse is causal and stable too. */
public final class MinimumPhase {

  public static final Source CEPSTRUM =
      Source.of(
          "A. V. Oppenheim and R. W. Schafer, Discrete-Time Signal Processing: minimum phase from"
              + " the folded real cepstrum; from memory, not checked against a copy");

  private MinimumPhase() {}

  /**
   * Minimum-phase response.
   *
   * @param logMagnitude natural logarithm of the magnitude, finite, one value a bin from 0 to half
   *     the size, a power of two. Narrow dips want a size many times the length of the response
   */
  public static Spectrum of(double[] logMagnitude) {
    return of(logMagnitude, () -> {});
  }

  /**
   * The same where it can take long.
   *
   * @param inTime called between transforms; ends the work by what it throws
   */
  static Spectrum of(double[] logMagnitude, Runnable inTime) {
    inTime.run();
    double[] none = new double[logMagnitude.length];
    double[] cepstrum = Spectrum.ofBins(logMagnitude, none).signal();
    int half = cepstrum.length / 2;
    for (int n = 1; n < half; n++) {
      cepstrum[n] *= 2;
      cepstrum[half + n] = 0;
    }
    inTime.run();
    Spectrum logarithm = Spectrum.of(cepstrum, cepstrum.length);
    inTime.run();
    double[] re = new double[logarithm.bins()];
    double[] im = new double[re.length];
    for (int k = 0; k < re.length; k++) {
      double size = Math.exp(logarithm.re(k));
      re[k] = size * Math.cos(logarithm.im(k));
      im[k] = size * Math.sin(logarithm.im(k));
    }
    return Spectrum.ofBins(re, im);
  }
}
