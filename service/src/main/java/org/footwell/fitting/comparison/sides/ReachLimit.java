package org.footwell.fitting.comparison.sides;

/** What the lowest useful frequency comes from. */
public enum ReachLimit {
  /** The stated frequency at 3 dB down. */
  RESPONSE,
  /** The resonance, where no such frequency is known of both parts. */
  RESONANCE,
  /** The travel of the cone at the level that is judged. */
  DISPLACEMENT
}
