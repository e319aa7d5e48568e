package org.footwell.acoustic.exposure;

import org.footwell.calculation.FaultCode;

/** Why an exposure cannot be given. */
public enum ExposureFault implements FaultCode {
  DAY_TOO_LONG
}
