package org.footwell.factory.sum;

import org.footwell.physics.Phasor;

/**
 * One output with its response, and what is known of its delay and all-pass filters.
 *
 * @param connected whether it is in the sum now
 * @param factor gain and voltage, below 0 where it is inverted
 * @param filterDelayMs delay beside the response, which is in {@link #at}
 * @param delayMs all of its delay but that of its minimum phase, ms
 * @param allPassHz frequency of an all-pass in it, or null
 */
record KnownOutput(
    boolean connected,
    OutputResponse response,
    double factor,
    double filterDelayMs,
    double delayMs,
    Double allPassHz) {

  Phasor at(double f) {
    return OutputResponse.delayed(response.at(f).times(factor), f, filterDelayMs);
  }
}
