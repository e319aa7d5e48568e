package org.footwell.acoustic.enclosure.lowend;

import org.footwell.calculation.FaultCode;

/** Why no box can be like that. */
public enum BoxFault implements FaultCode {
  LONGEST_TOO_SHORT
}
