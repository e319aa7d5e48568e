package org.footwell.signal;

import org.footwell.calculation.Source;

/** Windows that are sums of cosines, and fades made of halves of the Hann window. */
public enum Window {
  RECTANGULAR(1, 0, 0, 0),
  HANN(0.5, 0.5, 0, 0),
  BLACKMAN(0.42, 0.5, 0.08, 0),
  /** Four terms, highest side lobe −92 dB. */
  BLACKMAN_HARRIS(0.35875, 0.48829, 0.14128, 0.01168);

  public static final Source HARRIS =
      Source.of(
          "F. J. Harris, On the use of windows for harmonic analysis with the discrete Fourier"
              + " transform, Proceedings of the IEEE 66 (1978)");

  private final double mean;
  private final double first;
  private final double second;
  private final double third;

  Window(double mean, double first, double second, double third) {
    this.mean = mean;
    this.first = first;
    this.second = second;
    this.third = third;
  }

  /** The window of so many samples, equal at both ends. */
  public double[] symmetric(int samples) {
    return shape(samples, samples - 1);
  }

  /** The window whose repetition is smooth: for spectra. */
  public double[] periodic(int samples) {
    return shape(samples, samples);
  }

  private double[] shape(int samples, int period) {
    double[] window = new double[samples];
    for (int n = 0; n < samples; n++) {
      double x = period == 0 ? Math.PI : 2 * Math.PI * n / period;
      window[n] = mean - first * Math.cos(x) + second * Math.cos(2 * x) - third * Math.cos(3 * x);
    }
    return window;
  }

  /** Factor from 0 at the start to 1 at the end of a fade of so many samples; sin² between. */
  public static double fade(int sample, int samples) {
    if (sample >= samples) {
      return 1;
    }
    double root = sample <= 0 ? 0 : Math.sin(Math.PI / 2 * sample / samples);
    return root * root;
  }

  /** A gate: fades in over the first samples, out over the last, 1 between. */
  public static double[] gate(int samples, int fadeIn, int fadeOut) {
    double[] gate = new double[samples];
    for (int n = 0; n < samples; n++) {
      gate[n] = fade(n, fadeIn) * fade(samples - 1 - n, fadeOut);
    }
    return gate;
  }
}
