package org.footwell.acoustic.crossover;

import org.footwell.calculation.FaultCode;

/** Why crossovers cannot be planned. */
public enum CrossoverFault implements FaultCode {
  BAND_LIMITS_REVERSED,
  BOX_LOWERS_RESONANCE
}
