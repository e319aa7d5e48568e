package org.footwell.analysis;

import org.footwell.calculation.Refused;

/**
 * The output at one value of the input.
 *
 * @param output not a number where there is none
 * @param refused why there is none, or null
 */
record Sample(double value, double output, Refused refused) {

  boolean isKnown() {
    return !Double.isNaN(output);
  }
}
