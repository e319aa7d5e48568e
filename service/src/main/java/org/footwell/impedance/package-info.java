/** What a driver and the passive network before it are to the amplifier, over frequency. */
package org.footwell.impedance;
