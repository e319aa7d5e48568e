/** How a driver plays low in any box: drive, response, movement, what holds it, the curve. */
package org.footwell.acoustic.enclosure.lowend;
