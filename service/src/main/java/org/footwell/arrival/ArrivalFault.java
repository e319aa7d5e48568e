package org.footwell.arrival;

import org.footwell.calculation.FaultCode;

/** Why arrivals cannot be given. */
public enum ArrivalFault implements FaultCode {
  SWEEP_NOT_EXPECTED,
  SWEEP_REVERSED,
  SWEEP_ABOVE_HALF_RATE,
  SWEEP_CUT_OFF,
  LOOPBACK_NOT_EXPECTED,
  TAKE_MISSING,
  BAND_TOO_NARROW,
  BAND_ABOVE_HALF_RATE,
  FILTER_ORDER_ODD,
  NO_ARRIVAL_FOUND
}
