/** How two measured loudspeakers sum around their crossover. */
package org.footwell.measured.sum;
