package org.footwell.fitting.comparison;

import org.footwell.calculation.FaultCode;

/** Why parts cannot be compared. */
public enum ComparisonFault implements FaultCode {
  AMPLIFIER_WITHOUT_FACTORY_PART
}
