package org.footwell.fitting.comparison.sides;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What holds the largest clean level. */
public enum LevelLimit {
  /** The power the driver bears continuously. */
  @JsonProperty("thermal")
  THERMAL("the power it bears"),
  /** The travel of the cone. */
  @JsonProperty("displacement")
  DISPLACEMENT("the travel of its cone"),
  /** The amplifier's clean power. */
  @JsonProperty("amplifier")
  AMPLIFIER("the amplifier");

  private final String words;

  LevelLimit(String words) {
    this.words = words;
  }

  /** As a sentence says it. */
  public String inWords() {
    return words;
  }
}
