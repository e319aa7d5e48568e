package org.footwell.vehicle;

import org.footwell.calculation.text.Words;

/** What may be wrong in the vehicle where measurements are not as predicted; simplest first. */
public enum LikelyCause implements Words {
  /** The loudspeaker pushes the other way. */
  POLARITY_INVERTED,
  /** Two channels drive each other's loudspeakers. */
  WIRES_SWAPPED,
  /** A high-pass of the plan does not work. */
  HIGH_PASS_MISSING,
  /** A low-pass of the plan does not work. */
  LOW_PASS_MISSING,
  /** Its corner is an octave off. */
  HIGH_PASS_OFF,
  /** Its corner is an octave off. */
  LOW_PASS_OFF,
  /** No current through one voice coil. */
  COIL_OPEN,
  /** A closed box is not tight. */
  BOX_LEAKS,
  /** Set louder or quieter than the plan says. */
  GAIN_OFF
}
