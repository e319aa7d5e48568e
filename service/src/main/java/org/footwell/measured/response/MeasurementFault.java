package org.footwell.measured.response;

import java.util.Arrays;
import java.util.stream.Stream;
import org.footwell.calculation.FaultCode;
import org.footwell.recording.RecordingFault;

/** Why a set of recordings cannot be used. */
public enum MeasurementFault implements FaultCode {
  SWEEP_NOT_EXPECTED,
  SWEEP_ABOVE_HALF_RATE,
  SWEEP_CUT_OFF,
  TAKE_MISSING;

  /** These, those of single recordings, and others: for a card. */
  public static FaultCode[] and(FaultCode... others) {
    return Stream.of(values(), RecordingFault.values(), others)
        .flatMap(Arrays::stream)
        .toArray(FaultCode[]::new);
  }
}
