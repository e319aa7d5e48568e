package org.footwell.analysis.tolerance;

import org.footwell.calculation.FaultCode;

/** Why an error budget cannot be drawn up. */
public enum ToleranceFault implements FaultCode {
  NOTHING_UNCERTAIN,
  HAS_NO_TOLERANCE,
  NOT_STATED,
  PERCENT_OF_ZERO,
  TOO_MANY_UNCERTAIN,
  TOO_MANY_RUNS,
  TOO_MANY_DRAWS,
  OUT_OF_TIME,
  TOO_FEW_ANSWERED
}
