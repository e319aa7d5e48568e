package org.footwell.signal;

import org.footwell.calculation.FaultCode;

/** Why there is no such digital section. */
public enum SectionFault implements FaultCode {
  ABOVE_HALF_RATE,
  SECTION_WITHOUT_SUCH
}
