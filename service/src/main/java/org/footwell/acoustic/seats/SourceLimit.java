package org.footwell.acoustic.seats;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What stops a source from playing louder. */
public enum SourceLimit {
  /** Its amplifier at full signal. */
  @JsonProperty("amplifier")
  AMPLIFIER,
  /** Its continuous power. */
  @JsonProperty("thermal")
  THERMAL,
  /** The movement of its cone. */
  @JsonProperty("displacement")
  DISPLACEMENT;

  /** In the words of a sentence. */
  String inWords() {
    return switch (this) {
      case AMPLIFIER -> "amplifier power";
      case THERMAL -> "heat";
      case DISPLACEMENT -> "cone movement";
    };
  }
}
