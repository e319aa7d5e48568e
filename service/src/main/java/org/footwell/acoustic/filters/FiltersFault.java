package org.footwell.acoustic.filters;

import org.footwell.calculation.FaultCode;

/** Why filters cannot be made. */
public enum FiltersFault implements FaultCode {
  FRACTION_LONGER_THAN_WORD
}
