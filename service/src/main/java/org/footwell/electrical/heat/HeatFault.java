package org.footwell.electrical.heat;

import org.footwell.calculation.FaultCode;

/** Why current and heat cannot be given. */
public enum HeatFault implements FaultCode {
  NEEDED_FOR_CLASS,
  NOT_FOR_CLASS,
  EFFICIENCY_BELOW_IDLE_LOSS,
  DRAW_IMPOSSIBLE
}
