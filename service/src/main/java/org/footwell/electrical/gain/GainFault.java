package org.footwell.electrical.gain;

import org.footwell.calculation.FaultCode;

/** Why no settings can be given. */
public enum GainFault implements FaultCode {
  TONE_ABOVE_FULL_OUTPUT
}
