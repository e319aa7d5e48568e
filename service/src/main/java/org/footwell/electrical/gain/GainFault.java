package org.footwell.electrical.gain;

import org.footwell.calculation.FaultCode;

/** Why no settings can be given. */
public enum GainFault implements FaultCode {
  RANGE_UPSIDE_DOWN,
  DROP_NOT_BELOW_SUPPLY,
  NEEDED_WITH,
  TONE_ABOVE_FULL_OUTPUT
}
