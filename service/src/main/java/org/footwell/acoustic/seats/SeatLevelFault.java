package org.footwell.acoustic.seats;

import org.footwell.calculation.FaultCode;

/** Why levels at the seats cannot be given. */
public enum SeatLevelFault implements FaultCode {
  PLACE_MISSING,
  SEAT_DISTANCE_MISSING,
  SOURCE_TOO_NEAR,
  TARGET_OUTSIDE_BANDS
}
