package org.footwell.electrical.supply;

import org.footwell.calculation.FaultCode;

/** Why a supply budget cannot be drawn up. */
public enum BudgetFault implements FaultCode {
  DEPTH_BEYOND_CAPACITY,
  DEPTH_ALREADY_REACHED,
  RESERVE_IMPOSSIBLE,
  VOLTAGES_DO_NOT_MATCH
}
