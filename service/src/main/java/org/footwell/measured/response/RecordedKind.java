package org.footwell.measured.response;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What was recorded. */
public enum RecordedKind {
  /** Impulse responses, made elsewhere. */
  @JsonProperty("impulse_response")
  IMPULSE_RESPONSE,
  /** Recordings of a known exponential sweep. */
  @JsonProperty("sweep")
  SWEEP
}
