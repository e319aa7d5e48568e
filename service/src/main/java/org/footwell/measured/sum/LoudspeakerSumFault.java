package org.footwell.measured.sum;

import org.footwell.calculation.FaultCode;

/** Why a sum cannot be judged. */
public enum LoudspeakerSumFault implements FaultCode {
  CROSSOVER_BEYOND_RECORDING,
  CROSSOVER_BELOW_GATE
}
