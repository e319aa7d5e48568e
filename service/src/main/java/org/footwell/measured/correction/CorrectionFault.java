package org.footwell.measured.correction;

import org.footwell.calculation.FaultCode;

/** Why a correction cannot be given. */
public enum CorrectionFault implements FaultCode {
  CORRECTION_RANGE_EMPTY,
  NOTHING_TO_CORRECT
}
