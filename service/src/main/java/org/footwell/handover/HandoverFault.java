package org.footwell.handover;

import org.footwell.calculation.FaultCode;

/** Why a sum cannot be judged. */
public enum HandoverFault implements FaultCode {
  CROSSOVER_BEYOND_RECORDING,
  CROSSOVER_BELOW_GATE
}
