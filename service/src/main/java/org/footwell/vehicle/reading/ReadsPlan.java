package org.footwell.vehicle.reading;

import org.footwell.calculation.Keeps;
import org.footwell.electrical.load.NetworkNotation;

/** Whatever follows the networks of a plan. */
@Keeps(
    value = NetworkNotation.class,
    of = {"channels.*.network", "channels.*.branches.*.network"})
public interface ReadsPlan {}
