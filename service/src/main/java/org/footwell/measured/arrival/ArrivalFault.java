package org.footwell.measured.arrival;

import org.footwell.calculation.FaultCode;

/** Why arrivals cannot be given. */
public enum ArrivalFault implements FaultCode {
  LOOPBACK_NOT_EXPECTED,
  BAND_TOO_NARROW,
  BAND_ABOVE_HALF_RATE,
  NO_ARRIVAL_FOUND
}
