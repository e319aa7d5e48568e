package org.footwell.measured.balance;

import org.footwell.calculation.FaultCode;

/** Why levels cannot be given. */
public enum BalanceFault implements FaultCode {
  CHANNEL_BAND_EMPTY,
  CHANNEL_NOT_HEARD,
  CHANNEL_BEYOND_SWEEP
}
