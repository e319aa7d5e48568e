package org.footwell.factory.sum;

import org.footwell.calculation.FaultCode;

/** Why outputs cannot be added up. */
public enum SignalSumFault implements FaultCode {
  RESPONSE_GIVEN_TWICE,
  TOO_FEW_POINTS,
  NO_OUTPUT_IN_SUM,
  BAND_OUTSIDE_RESPONSES,
  SUM_SILENT
}
