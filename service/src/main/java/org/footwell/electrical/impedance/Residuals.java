package org.footwell.electrical.impedance;

/** How far a fit misses its readings. */
final class Residuals {

  private Residuals() {}

  /** Root mean square over the moduli, relative. */
  static double rms(DriverFit fit, int readings) {
    return rms(fit, 0, readings);
  }

  /** Root mean square over the phases in degrees, or null when there are none. */
  static Double phaseDeg(DriverFit fit, int readings) {
    int all = fit.residualCount();
    return all == readings ? null : (Double) Math.toDegrees(rms(fit, readings, all));
  }

  /** The reading whose modulus is missed farthest. */
  static int worst(DriverFit fit, int readings) {
    int worst = 0;
    for (int i = 1; i < readings; i++) {
      worst = Math.abs(fit.residual(i)) > Math.abs(fit.residual(worst)) ? i : worst;
    }
    return worst;
  }

  private static double rms(DriverFit fit, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += fit.residual(i) * fit.residual(i);
    }
    return Math.sqrt(sum / (to - from));
  }
}
