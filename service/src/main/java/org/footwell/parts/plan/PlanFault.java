package org.footwell.parts.plan;

import org.footwell.calculation.FaultCode;

/** Why a plan does not hang together. */
public enum PlanFault implements FaultCode {
  OUTPUT_USED_TWICE,
  DRIVER_USED_TWICE,
  BRIDGE_OF_ONE,
  BRIDGE_OF_UNLIKE,
  COIL_NOT_THERE,
  SEAT_OUTSIDE_VEHICLE,
  CROSSOVERS_IN_A_CIRCLE,
  CHANNEL_WITHOUT_DRIVER,
  DAY_NOT_IN_CALENDAR,
  VALID_BEFORE_DATE
}
