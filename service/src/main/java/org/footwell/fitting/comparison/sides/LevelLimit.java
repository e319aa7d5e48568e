package org.footwell.fitting.comparison.sides;

/** What holds the largest clean level. */
public enum LevelLimit {
  /** The power the driver bears continuously. */
  THERMAL("the power it bears"),
  /** The travel of the cone. */
  DISPLACEMENT("the travel of its cone"),
  /** The amplifier's clean power. */
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
