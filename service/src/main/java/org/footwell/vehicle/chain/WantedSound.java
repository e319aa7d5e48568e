package org.footwell.vehicle.chain;

import org.footwell.calculation.Built;

/**
 * What is wanted of a channel, and what was set.
 *
 * @param fromBand first third octave its trim is found in
 * @param toBand last one
 * @param levelDb wanted against the others
 * @param delayMs wanted beyond flight times
 * @param wired polarity of its wiring
 * @param chainDelayMs delay it has already
 * @param setSourceV source voltage that was really set, or null
 * @param setTrimDb trim that was really set, or null
 * @param setDelayMs delay that was really set, or null
 * @param setPolarity polarity that was really set, or null
 */
@Built
public record WantedSound(
    int fromBand,
    int toBand,
    double levelDb,
    double delayMs,
    int wired,
    double chainDelayMs,
    Double setSourceV,
    Double setTrimDb,
    Double setDelayMs,
    Integer setPolarity) {}
