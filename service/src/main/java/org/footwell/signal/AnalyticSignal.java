package org.footwell.signal;

import org.footwell.calculation.Source;

/** A signal with its Hilbert transform as imaginary part, sample by sample. */
public final class AnalyticSignal {

  public static final Source ENVELOPE =
      Source.of("D. Gabor, Theory of communication, Journal of the IEE 93 (1946): analytic signal");

  private final double[] re;
  private final double[] im;

  AnalyticSignal(double[] re, double[] im) {
    this.re = re;
    this.im = im;
  }

  public int size() {
    return re.length;
  }

  /** The envelope: the size of the analytic signal. */
  public double[] envelope() {
    double[] envelope = new double[re.length];
    for (int n = 0; n < envelope.length; n++) {
      envelope[n] = Math.hypot(re[n], im[n]);
    }
    return envelope;
  }

  /** Angle in radians at a sample. */
  public double phase(int sample) {
    return Math.atan2(im[sample], re[sample]);
  }

  /**
   * Where between its neighbours a peak lies, in samples, −0.5 to 0.5: the top of the parabola
   * through the three.
   */
  public static double parabolicOffset(double before, double peak, double after) {
    double curvature = before - 2 * peak + after;
    return curvature == 0 ? 0 : Math.max(-0.5, Math.min(0.5, 0.5 * (before - after) / curvature));
  }
}
