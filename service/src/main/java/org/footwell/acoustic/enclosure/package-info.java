/** Boxes and baffles for a driver: what they make of it and how they must be built. */
package org.footwell.acoustic.enclosure;
