package org.footwell.factory.sum;

import org.footwell.factory.sum.SignalSumRequest.Output;
import org.footwell.physics.Phasor;

/**
 * One output with its response, and what is known of its delay and all-pass filters.
 *
 * @param factor gain, polarity and voltage
 * @param filterDelayMs delay beside the response, which is in {@link #at}
 * @param delayMs all of its delay but that of its minimum phase, ms
 * @param allPassHz frequency of an all-pass in it, or null
 */
record KnownOutput(
    Output output,
    OutputResponse response,
    double factor,
    double filterDelayMs,
    double delayMs,
    Double allPassHz) {

  Phasor at(double f) {
    return OutputResponse.delayed(response.at(f).times(factor), f, filterDelayMs);
  }
}
