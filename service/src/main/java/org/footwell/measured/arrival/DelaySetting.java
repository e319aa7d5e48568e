package org.footwell.measured.arrival;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.measured.arrival.ArrivalTimesRequest.Processor;

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

  static DelaySetting of(double lastMs, double ownMs, Processor processor, Run run) {
    double exact = run.apply(DELAY, lastMs, ownMs);
    if (processor == null) {
      return new DelaySetting(exact, null, null);
    }
    if (processor.rateHz() == null) {
      return new DelaySetting(exact, null, run.apply(ON_STEPS, exact, processor.stepMs()));
    }
    double samples = run.apply(SAMPLES, exact, processor.rateHz());
    return new DelaySetting(
        exact, (int) samples, run.apply(OF_SAMPLES, samples, processor.rateHz()));
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
