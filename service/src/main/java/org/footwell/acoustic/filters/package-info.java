/** Digital crossover and equaliser filters: sections, their rounding, and the sum of all ways. */
package org.footwell.acoustic.filters;
