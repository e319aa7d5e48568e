/** Supply current and heat of an amplifier for sines, noise and music. */
package org.footwell.electrical.heat;
