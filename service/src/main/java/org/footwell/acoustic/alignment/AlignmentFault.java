package org.footwell.acoustic.alignment;

import org.footwell.calculation.FaultCode;

/** Why delays cannot be given. */
public enum AlignmentFault implements FaultCode {
  POSITION_MISSING,
  DISTANCE_MISSING,
  ARRIVAL_MISSING,
  TOO_CLOSE,
  CROSSOVER_WITH_ITSELF,
  CROSSOVER_CIRCLE
}
