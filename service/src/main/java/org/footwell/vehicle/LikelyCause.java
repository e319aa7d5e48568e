package org.footwell.vehicle;

import org.footwell.vehicle.faults.FaultKind;

/** What a review names where measurements are not as predicted: the usual of the {@link FaultKind}. */
public enum LikelyCause {
  /** The loudspeaker pushes the other way. */
  POLARITY_INVERTED,
  /** Two channels drive each other's loudspeakers. */
  WIRES_SWAPPED,
  /** A high-pass of the plan does not work. */
  HIGH_PASS_MISSING,
  /** A low-pass of the plan does not work. */
  LOW_PASS_MISSING,
  /** Its corner is another. */
  HIGH_PASS_OFF,
  /** Its corner is another. */
  LOW_PASS_OFF,
  /** No current through one voice coil. */
  COIL_OPEN,
  /** A closed box is not tight. */
  BOX_LEAKS,
  /** Set louder or quieter than the plan says. */
  GAIN_OFF;

  static boolean has(FaultKind kind) {
    for (LikelyCause one : values()) {
      if (one.name().equals(kind.name())) {
        return true;
      }
    }
    return false;
  }
}
