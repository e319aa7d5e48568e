/** What recordings at the seats say: arrivals, levels, corrections, sums. */
package org.footwell.measured;
