package org.footwell.calculation;

import com.fasterxml.jackson.annotation.JsonProperty;

/** The worst thing that was found, from harmless to forbidding. */
public enum Verdict {
  /** Nothing to remark. */
  @JsonProperty("ok")
  OK,
  /** Worth knowing; nothing to change. */
  @JsonProperty("note")
  NOTE,
  /** Works, but not as a careful fitter would leave it. */
  @JsonProperty("warning")
  WARNING,
  /** Do not build it like this. */
  @JsonProperty("stop")
  STOP;

  public Verdict orWorse(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
