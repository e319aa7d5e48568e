package org.footwell.parts;

import org.footwell.calculation.FaultCode;

/** Why a list or range of frequencies cannot be used. */
public enum FrequencyFault implements FaultCode {
  RANGE_WITHOUT_POINTS
}
