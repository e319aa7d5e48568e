package org.footwell.parts;

import java.util.stream.Stream;
import org.footwell.calculation.FaultCode;

/** Why there is no such filter. */
public enum FilterFault implements FaultCode {
  LINKWITZ_RILEY_ODD;

  /** These and the calculation's own. */
  public static FaultCode[] and(FaultCode... own) {
    return Stream.concat(Stream.of(own), Stream.of(values())).toArray(FaultCode[]::new);
  }
}
