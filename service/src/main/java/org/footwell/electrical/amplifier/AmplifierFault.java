package org.footwell.electrical.amplifier;

import org.footwell.calculation.FaultCode;

/** Why nothing can be said about an amplifier. */
public enum AmplifierFault implements FaultCode {
  BRIDGE_OF_BRIDGES,
  LOADS_WITHOUT_SPREAD,
  SAG_GROSSLY_NEGATIVE,
  RATING_IMPOSSIBLE
}
