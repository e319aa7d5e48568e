package org.footwell.analysis;

import org.footwell.calculation.FaultCode;

/** Why a calculation cannot be asked again and again as a caller wishes. */
public enum AnalysisFault implements FaultCode {
  UNKNOWN_INPUT,
  UNKNOWN_OUTPUT,
  NAMES_NEEDED,
  NO_STANDARD_VALUE,
  TOO_MANY_POINTS,
  NOT_A_NUMBER
}
