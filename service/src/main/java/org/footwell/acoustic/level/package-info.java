/** How loud it gets: level at the seat, weighting, exposure. */
package org.footwell.acoustic.level;
