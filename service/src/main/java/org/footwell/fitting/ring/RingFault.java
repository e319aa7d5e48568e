package org.footwell.fitting.ring;

import org.footwell.calculation.FaultCode;

/** Measures that cannot be those of one thing. */
public enum RingFault implements FaultCode {
  NOT_INSIDE,
  HOLE_IN_DRIVER_CUT_OUT,
  HOLE_OUTSIDE_FRAME,
  FACTORY_HOLE_IN_CUT_OUT,
  HOLES_COINCIDE,
  OUTER_WITHIN_INNER,
  RING_DOES_NOT_FIT
}
