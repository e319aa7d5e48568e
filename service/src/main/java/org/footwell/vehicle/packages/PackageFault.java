package org.footwell.vehicle.packages;

import org.footwell.calculation.FaultCode;

/** Why packages cannot be put together for a plan as it stands. */
public enum PackageFault implements FaultCode {
  SLOT_NOT_ON_A_CHANNEL,
  SLOT_SHARES_A_NETWORK,
  KEPT_PARTS_UNLIKE,
  ID_TAKEN_BY_THE_PLAN,
  NOTHING_OFFERED_FOR_SLOT
}
