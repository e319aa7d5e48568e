package org.footwell.vehicle.faults;

import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.ChannelState;

/**
 * What one channel would give.
 *
 * @param values its figures, scaled, in the order of the list; NaN where they could not be measured
 * @param meanW what its amplifier gives on average
 */
@SuppressWarnings("ArrayRecordComponent") // made for every fault, never compared
record ChannelPart(ChannelChain chain, ChannelState state, double[] values, double meanW) {}
