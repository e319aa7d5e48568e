package org.footwell.electrical.passive;

import org.footwell.calculation.FaultCode;

/** Why a passive network cannot be worked out. */
public enum NetworkFault implements FaultCode {
  ELEMENT_EMPTY,
  COIL_RESISTANCE_WITHOUT_COIL,
  ZERO_RESISTANCE_LOOP,
  ORDER_NOT_PASSIVE,
  ORDER_NOT_LINKWITZ_RILEY,
  NOTHING_TO_DESIGN,
  DRIVER_MISSING,
  NOTHING_TO_COMPENSATE,
  PART_OUT_OF_REACH
}
