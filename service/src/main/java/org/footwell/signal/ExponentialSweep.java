package org.footwell.signal;

import org.footwell.calculation.Source;

/**
 * A sine whose frequency grows by the same ratio in equal times.
 *
 * @param fromHz frequency at the start, Hz
 * @param toHz frequency at the end, Hz
 * @param durationS length, s
 */
public record ExponentialSweep(double fromHz, double toHz, double durationS) {

  public static final Source FARINA =
      Source.of(
          "A. Farina, Simultaneous measurement of impulse response and distortion with a"
              + " swept-sine technique, 108th AES Convention (2000)");

  /** Value at a time in s from the start: sin(2π·f1·T/r·(e^(r·t/T) − 1)) with r = ln(f2/f1). */
  public double at(double timeS) {
    double r = Math.log(toHz / fromHz);
    return Math.sin(2 * Math.PI * fromHz * durationS / r * Math.expm1(r * timeS / durationS));
  }

  /** Length in whole samples. */
  public int samples(double rateHz) {
    return (int) Math.round(durationS * rateHz);
  }

  /** The sweep in samples, with amplitude 1. */
  public double[] signal(double rateHz) {
    double[] signal = new double[samples(rateHz)];
    for (int n = 0; n < signal.length; n++) {
      signal[n] = at(n / rateHz);
    }
    return signal;
  }
}
