package org.footwell.acoustic.alignment;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.parts.Processor;

/** What can be set: exact delays, or those on the steps of a processor. */
final class DelaySteps {

  private static final Formula.Of3 SAMPLES =
      Formula.of("delay_samples", "step·round(t·rate/(1000·step))", "samples", DEFINITION)
          .with("t", "rate", "step", (t, rate, step) -> step * Math.rint(t * rate / 1000 / step));
  private static final Formula.Of2 SETTING =
      Formula.of("setting_ms", "1000·samples/rate", "ms", DEFINITION)
          .with("samples", "rate", (samples, rate) -> 1000 * samples / rate);

  private final double[] samples;

  /** Delay that each channel really gets added, ms. */
  final double[] addedMs;

  DelaySteps(double[] exactMs, Processor processor, Arithmetic steps) {
    samples = processor == null ? null : new double[exactMs.length];
    addedMs = exactMs.clone();
    if (processor != null) {
      for (int c = 0; c < samples.length; c++) {
        samples[c] = steps.apply(SAMPLES, exactMs[c], processor.rateHz(), processor.stepSamples());
        addedMs[c] = steps.apply(SETTING, samples[c], processor.rateHz());
      }
    }
  }

  /** Delay of a channel in samples; null without a processor. */
  Double samples(int channel) {
    return samples == null ? null : (Double) samples[channel];
  }

  /** Rounded delay of a channel, ms; null without a processor. */
  Double roundedMs(int channel) {
    return samples == null ? null : (Double) addedMs[channel];
  }
}
