/** Curves over axes, as SVG that reads without colour, in print and in the dark. */
package org.footwell.plot;
