package org.footwell.fitting.comparison.sides;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What the lowest useful frequency comes from. */
public enum ReachLimit {
  /** The stated frequency at 3 dB down. */
  @JsonProperty("response")
  RESPONSE,
  /** The resonance, where no such frequency is known of both parts. */
  @JsonProperty("resonance")
  RESONANCE,
  /** The travel of the cone at the level that is judged. */
  @JsonProperty("displacement")
  DISPLACEMENT
}
