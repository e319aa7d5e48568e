package org.footwell.acoustic.alignment;

import org.footwell.calculation.FaultCode;

/** Why delays cannot be given. */
public enum AlignmentFault implements FaultCode {
  POSITION_MISSING,
  POSITION_BESIDE_DISTANCES,
  DISTANCE_MISSING,
  ARRIVAL_MISSING,
  TOO_CLOSE,
  HIGH_PASS_ABOVE_LOW_PASS,
  CROSSOVER_WITH_ITSELF,
  CROSSOVER_CIRCLE
}
