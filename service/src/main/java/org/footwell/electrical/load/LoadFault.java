package org.footwell.electrical.load;

import org.footwell.calculation.FaultCode;

/** Why the load of a network cannot be given. */
public enum LoadFault implements FaultCode {
  NETWORK_SYNTAX,
  NETWORK_OPERATOR_MISSING,
  NETWORK_SINGLE_BAR,
  NETWORK_ENCODED,
  NETWORK_TOO_LARGE,
  NETWORK_TOO_DEEP,
  COIL_OUT_OF_RANGE,
  UNKNOWN_COIL,
  BAND_MISSING,
  BAND_SPLIT_IN_SERIES
}
