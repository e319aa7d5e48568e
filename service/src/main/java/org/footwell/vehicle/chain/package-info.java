/**
 * The one model of the vehicle: from full scale of the source through filters, gain, amplifier, cable,
 * network and driver to the air at each seat. Complex RMS phasors over frequency, time factor
 * e^(+jωt); linear up to the clip point of the amplifier. It knows no run and no finding.
 */
package org.footwell.vehicle.chain;
