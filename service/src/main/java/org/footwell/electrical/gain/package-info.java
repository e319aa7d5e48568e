/** Gain through a chain from the source to the amplifier, and the noise that comes with it. */
package org.footwell.electrical.gain;
