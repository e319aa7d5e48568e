/** A position of the vehicle: its factory part and the replacement side by side. */
package org.footwell.fitting.comparison.sides;
