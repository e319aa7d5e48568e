/** Factory drivers against their replacements: what changes, and what it costs. */
package org.footwell.fitting.comparison;
