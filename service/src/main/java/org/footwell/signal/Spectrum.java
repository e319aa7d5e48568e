package org.footwell.signal;

import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.footwell.calculation.Source;

/**
 * Discrete Fourier transform of a real signal: bins 0 to size/2, X(k) = Σ x(n)·e^(−2πikn/size),
 * without a factor; bin k lies at k·rate/size.
 */
public final class Spectrum {

  public static final Source TRANSFORM =
      Source.of("Discrete Fourier transform, by Apache Commons Math 3.6.1");

  private final double[] re;
  private final double[] im;

  private Spectrum(double[] re, double[] im) {
    this.re = re;
    this.im = im;
  }

  /** The smallest size of a transform that holds so many samples: a power of two, 4 at least. */
  public static int sizeFor(int samples) {
    return Math.max(4, Integer.highestOneBit(Math.max(1, samples - 1)) << 1);
  }

  /** Transform of a signal, followed by zeros up to {@code size}, a power of two from 4. */
  public static Spectrum of(double[] signal, int size) {
    // Even samples as real and odd ones as imaginary part: half the work.
    int half = size / 2;
    double[][] packed = new double[2][half];
    for (int n = 0; n < signal.length; n++) {
      packed[n & 1][n >> 1] = signal[n];
    }
    FastFourierTransformer.transformInPlace(
        packed, DftNormalization.STANDARD, TransformType.FORWARD);
    double[] re = new double[half + 1];
    double[] im = new double[half + 1];
    for (int k = 0; k <= half; k++) {
      int here = k % half;
      int mirror = (half - k) % half;
      double evenRe = (packed[0][here] + packed[0][mirror]) / 2;
      double evenIm = (packed[1][here] - packed[1][mirror]) / 2;
      double oddRe = (packed[1][here] + packed[1][mirror]) / 2;
      double oddIm = (packed[0][mirror] - packed[0][here]) / 2;
      double cos = Math.cos(2 * Math.PI * k / size);
      double sin = -Math.sin(2 * Math.PI * k / size);
      re[k] = evenRe + oddRe * cos - oddIm * sin;
      im[k] = evenIm + oddRe * sin + oddIm * cos;
    }
    return new Spectrum(re, im);
  }

  /** A spectrum of given bins; the arrays are kept, not copied. */
  public static Spectrum ofBins(double[] re, double[] im) {
    return new Spectrum(re, im);
  }

  /** Number of samples of the signal. */
  public int size() {
    return 2 * (re.length - 1);
  }

  /** Number of bins: size/2 + 1. */
  public int bins() {
    return re.length;
  }

  public double re(int bin) {
    return re[bin];
  }

  public double im(int bin) {
    return im[bin];
  }

  /** |X|² of a bin. */
  public double power(int bin) {
    return re[bin] * re[bin] + im[bin] * im[bin];
  }

  /** |X|² of every bin. */
  public double[] powers() {
    double[] powers = new double[re.length];
    for (int k = 0; k < powers.length; k++) {
      powers[k] = power(k);
    }
    return powers;
  }

  /** Every bin times a real factor. */
  public Spectrum weighted(double[] factors) {
    double[] r = new double[re.length];
    double[] i = new double[re.length];
    for (int k = 0; k < r.length; k++) {
      r[k] = re[k] * factors[k];
      i[k] = im[k] * factors[k];
    }
    return new Spectrum(r, i);
  }

  /** Product with another of the same size: circular convolution of the signals. */
  public Spectrum times(Spectrum other) {
    double[] r = new double[re.length];
    double[] i = new double[re.length];
    for (int k = 0; k < r.length; k++) {
      r[k] = re[k] * other.re[k] - im[k] * other.im[k];
      i[k] = re[k] * other.im[k] + im[k] * other.re[k];
    }
    return new Spectrum(r, i);
  }

  /**
   * Quotient with another of the same size, X·conj(Y)/(|Y|² + floor): circular deconvolution.
   *
   * @param floor keeps bins where the other is weak from growing beyond bounds; 0 for none
   */
  public Spectrum over(Spectrum other, double floor) {
    double[] r = new double[re.length];
    double[] i = new double[re.length];
    for (int k = 0; k < r.length; k++) {
      double power = other.power(k) + floor;
      r[k] = (re[k] * other.re[k] + im[k] * other.im[k]) / power;
      i[k] = (im[k] * other.re[k] - re[k] * other.im[k]) / power;
    }
    return new Spectrum(r, i);
  }

  /** The signal behind it. */
  public double[] signal() {
    int half = re.length - 1;
    int size = 2 * half;
    double[][] packed = new double[2][half];
    for (int k = 0; k < half; k++) {
      int mirror = half - k;
      double evenRe = (re[k] + re[mirror]) / 2;
      double evenIm = (im[k] - im[mirror]) / 2;
      double turnedRe = (re[k] - re[mirror]) / 2;
      double turnedIm = (im[k] + im[mirror]) / 2;
      double cos = Math.cos(2 * Math.PI * k / size);
      double sin = Math.sin(2 * Math.PI * k / size);
      double oddRe = turnedRe * cos - turnedIm * sin;
      double oddIm = turnedRe * sin + turnedIm * cos;
      packed[0][k] = evenRe - oddIm;
      packed[1][k] = evenIm + oddRe;
    }
    FastFourierTransformer.transformInPlace(
        packed, DftNormalization.STANDARD, TransformType.INVERSE);
    double[] signal = new double[size];
    for (int n = 0; n < size; n++) {
      signal[n] = packed[n & 1][n >> 1];
    }
    return signal;
  }

  /** The signal with its quarter-turned twin as imaginary part: its size is the envelope. */
  public AnalyticSignal analytic() {
    int half = re.length - 1;
    double[][] bins = new double[2][2 * half];
    for (int k = 0; k <= half; k++) {
      double factor = k == 0 || k == half ? 1 : 2;
      bins[0][k] = factor * re[k];
      bins[1][k] = factor * im[k];
    }
    FastFourierTransformer.transformInPlace(bins, DftNormalization.STANDARD, TransformType.INVERSE);
    return new AnalyticSignal(bins[0], bins[1]);
  }

  /** Size of the analytic signal between samples, by the sum over the bins that are not zero. */
  public double envelopeAt(double sample) {
    double[] there = analyticAt(sample);
    return Math.hypot(there[0], there[1]);
  }

  /** Real and imaginary part of the analytic signal between samples. */
  public double[] analyticAt(double sample) {
    double angle = 2 * Math.PI * sample / size();
    double sumRe = 0;
    double sumIm = 0;
    for (int k = 1; k < re.length - 1; k++) {
      if (re[k] != 0 || im[k] != 0) {
        double cos = Math.cos(angle * k);
        double sin = Math.sin(angle * k);
        sumRe += re[k] * cos - im[k] * sin;
        sumIm += re[k] * sin + im[k] * cos;
      }
    }
    return new double[] {2 * sumRe / size(), 2 * sumIm / size()};
  }
}
