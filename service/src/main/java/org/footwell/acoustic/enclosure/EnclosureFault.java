package org.footwell.acoustic.enclosure;

import org.footwell.calculation.FaultCode;

/** Why a box cannot be computed. */
public enum EnclosureFault implements FaultCode {
  QTC_UNREACHABLE,
  ALIGNMENT_NOT_FOUND,
  TUNING_UNREACHABLE,
  PORT_FILLS_BOX
}
