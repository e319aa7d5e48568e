package org.footwell.electrical.load;

import org.footwell.calculation.FaultCode;

/** Why the networks of coils cannot be listed. */
public enum OptionsFault implements FaultCode {
  TOO_MANY_COILS,
  WINDOW_EMPTY
}
