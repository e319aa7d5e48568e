package org.footwell.fitting.carpentry;

import org.footwell.calculation.FaultCode;

/** Why a box cannot be cut. */
public enum CarpentryFault implements FaultCode {
  DIMENSIONS_UNDECIDED,
  DIMENSION_OUT_OF_REACH,
  WEDGE_NOT_A_WEDGE,
  CUTOUT_TOO_LARGE
}
