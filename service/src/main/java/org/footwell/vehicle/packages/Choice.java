package org.footwell.vehicle.packages;

import java.util.List;

/**
 * What may be in a unit and drive it.
 *
 * @param fillings of each of its slots
 * @param kind of output of each of its channels
 * @param figures price and mass of the parts, reach and level of the channels
 * @param cleanW clean power of all its channels at the rated supply voltage
 */
record Choice(List<Filling> fillings, OutputKind kind, PackageFigures figures, double cleanW) {}
