package org.footwell.acoustic.seats;

import org.footwell.calculation.text.Words;

/** What stops a source from playing louder. */
public enum SourceLimit implements Words {
  /** Its amplifier at full signal. */
  AMPLIFIER,
  /** Its continuous power. */
  THERMAL,
  /** The movement of its cone. */
  DISPLACEMENT
}
