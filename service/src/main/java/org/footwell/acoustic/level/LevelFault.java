package org.footwell.acoustic.level;

import org.footwell.calculation.FaultCode;

/** Why a level cannot be given. */
public enum LevelFault implements FaultCode {
  SEVERAL_DRIVERS_UNDECIDED
}
