/** Drivers, boxes, crossovers, levels at the seats and what they do to hearing. */
package org.footwell.acoustic;
