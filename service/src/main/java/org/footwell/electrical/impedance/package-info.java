/** What a driver is to the amplifier, over frequency; and what it is from readings of that. */
package org.footwell.electrical.impedance;
