package org.footwell.electrical.supply;

import org.footwell.calculation.FaultCode;

/** Why a supply cable cannot be sized. */
public enum CableFault implements FaultCode {
  PERMITTED_DROP_ZERO,
  PERMITTED_DROP_ABOVE_SUPPLY,
  DROP_ABOVE_SUPPLY,
  POWER_CANNOT_PASS,
  FIXED_RESISTANCE_TOO_HIGH,
  BODY_NOT_IN_LOOP
}
