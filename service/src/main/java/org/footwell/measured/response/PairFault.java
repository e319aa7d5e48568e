package org.footwell.measured.response;

import java.util.stream.Stream;
import org.footwell.calculation.FaultCode;

/** Why two channels are no pair. */
public enum PairFault implements FaultCode {
  PAIR_OF_ONE;

  /** These and the calculation's own. */
  public static FaultCode[] and(FaultCode... own) {
    return Stream.concat(Stream.of(own), Stream.of(values())).toArray(FaultCode[]::new);
  }
}
