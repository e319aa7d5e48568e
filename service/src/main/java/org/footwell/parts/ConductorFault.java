package org.footwell.parts;

import java.util.stream.Stream;
import org.footwell.calculation.FaultCode;

/** Why there is no such conductor. */
public enum ConductorFault implements FaultCode {
  CONDUCTIVITY_NOT_OF_MATERIAL;

  /** These and the calculation's own. */
  public static FaultCode[] and(FaultCode... own) {
    return Stream.concat(Stream.of(own), Stream.of(values())).toArray(FaultCode[]::new);
  }
}
