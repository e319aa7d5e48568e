package org.footwell.factory.sum;

import org.footwell.calculation.FaultCode;

/** Why outputs cannot be added up. */
public enum SignalSumFault implements FaultCode {
  POLARITY_ZERO,
  SECTION_FIELD_NOT_TAKEN,
  FREQUENCY_ABOVE_HALF_RATE,
  RESPONSE_GIVEN_TWICE,
  TOO_FEW_POINTS,
  VOLTAGES_INCOMPLETE,
  NO_OUTPUT_IN_SUM,
  BAND_OUTSIDE_RESPONSES,
  SUM_SILENT
}
