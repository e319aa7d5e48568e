/** Parametric filters that bring measured responses to a wanted curve. */
package org.footwell.measured.correction;
