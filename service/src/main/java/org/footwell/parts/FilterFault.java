package org.footwell.parts;

import org.footwell.calculation.FaultCode;

/** Why there is no such filter. */
public enum FilterFault implements FaultCode {
  LINKWITZ_RILEY_ODD
}
