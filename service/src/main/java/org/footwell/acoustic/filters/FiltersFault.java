package org.footwell.acoustic.filters;

import org.footwell.calculation.FaultCode;

/** Why filters cannot be made. */
public enum FiltersFault implements FaultCode {
  ABOVE_HALF_RATE,
  SECTION_WITHOUT_SUCH,
  FRACTION_LONGER_THAN_WORD
}
