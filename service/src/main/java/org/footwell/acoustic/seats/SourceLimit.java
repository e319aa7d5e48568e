package org.footwell.acoustic.seats;

/** What stops a source from playing louder. */
public enum SourceLimit {
  /** Its amplifier at full signal. */
  AMPLIFIER,
  /** Its continuous power. */
  THERMAL,
  /** The movement of its cone. */
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
