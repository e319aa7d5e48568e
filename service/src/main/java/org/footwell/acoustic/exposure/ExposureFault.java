package org.footwell.acoustic.exposure;

import org.footwell.calculation.FaultCode;

/** Why an exposure cannot be given. */
public enum ExposureFault implements FaultCode {
  UNWEIGHTED_LEVEL,
  C_LEVEL_GIVEN_TWICE,
  DAY_TOO_LONG
}
