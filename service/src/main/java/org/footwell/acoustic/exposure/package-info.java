/** Noise exposure of a day: doses by two rules, from A-weighted levels and their durations. */
package org.footwell.acoustic.exposure;
