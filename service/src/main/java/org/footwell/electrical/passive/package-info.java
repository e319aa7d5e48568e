/** Passive networks between amplifier and driver: what they do, and values for them. */
package org.footwell.electrical.passive;
