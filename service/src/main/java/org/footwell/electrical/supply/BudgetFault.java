package org.footwell.electrical.supply;

import org.footwell.calculation.FaultCode;

/** Why a supply budget cannot be drawn up. */
public enum BudgetFault implements FaultCode {
  DEPTH_BEYOND_CAPACITY,
  DEPTH_ALREADY_REACHED,
  PEUKERT_GIVEN_TWICE,
  RESERVE_IMPOSSIBLE,
  LOW_VOLTAGE_NOT_LOWER,
  OUTPUT_FALLS_WITH_SPEED,
  VOLTAGES_DO_NOT_MATCH
}
