package org.footwell.measured.response;

/** What was recorded. */
public enum RecordedKind {
  /** Impulse responses, made elsewhere. */
  IMPULSE_RESPONSE,
  /** Recordings of a known exponential sweep. */
  SWEEP
}
