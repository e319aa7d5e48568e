package org.footwell.measured.arrival;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;

/**
 * A delay as it can be set.
 *
 * @param exactMs what is needed, ms
 * @param samples whole samples of the processor, or null where it counts in ms
 * @param settingMs on the steps of the processor, ms, or null without one
 */
record DelaySetting(double exactMs, Integer samples, Double settingMs) {

  private static final Formula.Of2 DELAY =
      Formula.of("delay_ms", "t_last − t", "ms", DEFINITION)
          .with("t_last", "t", (last, own) -> last - own);
  private static final Formula.Of2 SAMPLES =
      Formula.of("delay_samples", "round(t·rate/1000)", "samples", DEFINITION)
          .with("t", "rate", (t, rate) -> Math.rint(t * rate / 1000));
  private static final Formula.Of2 OF_SAMPLES =
      Formula.of("setting_ms", "1000·samples/rate", "ms", DEFINITION)
          .with("samples", "rate", (samples, rate) -> 1000 * samples / rate);
  private static final Formula.Of2 ON_STEPS =
      Formula.of("setting_ms", "step·round(t/step)", "ms", DEFINITION)
          .with("t", "step", (t, step) -> step * Math.rint(t / step));

  /**
   * The delay of a channel that comes before the last.
   *
   * @param rateHz of a processor that counts in samples, or null
   * @param stepMs of one that counts in ms, or null
   */
  static DelaySetting of(
      double lastMs, double ownMs, Double rateHz, Double stepMs, Arithmetic arithmetic) {
    double exact = arithmetic.apply(DELAY, lastMs, ownMs);
    if (rateHz != null) {
      double samples = arithmetic.apply(SAMPLES, exact, rateHz);
      return new DelaySetting(exact, (int) samples, arithmetic.apply(OF_SAMPLES, samples, rateHz));
    }
    return new DelaySetting(
        exact, null, stepMs == null ? null : (Double) arithmetic.apply(ON_STEPS, exact, stepMs));
  }

  /** What is really added, ms. */
  double addedMs() {
    return settingMs == null ? exactMs : settingMs;
  }

  /** What rounding adds, ms, or null without a processor. */
  Double roundingErrorMs() {
    return settingMs == null ? null : (Double) (settingMs - exactMs);
  }
}
