package org.footwell.vehicle.repair;

import org.footwell.calculation.text.Words;

/** What can be changed in a plan, the least effort first; efforts are common practice, no source. */
public enum RepairKind implements Words {
  /** What was set goes back to what is advised. */
  SETTING(1),
  /** A gain that was set comes down. */
  GAIN(1),
  /** The filters of a crossover move together. */
  CROSSOVER(1),
  /** The corner of one filter moves, or it is new. */
  FILTER(1),
  /** The order of one filter changes. */
  FILTER_ORDER(1),
  /** An RMS limiter guards the voice coils. */
  LIMITER(1),
  /** The wires of a loudspeaker are turned. */
  POLARITY(2),
  /** Another fuse, or nearer to the battery. */
  FUSE(2),
  /** The same coils are wired otherwise. */
  WIRING(3),
  /** A capacitor before a driver. */
  CAPACITOR(3),
  /** A thicker cable. */
  CABLE(5),
  /** An offered part takes the place of another. */
  PART(8);

  private final int effort;

  RepairKind(int effort) {
    this.effort = effort;
  }

  /** Effort of one such change beside others. */
  int effort() {
    return effort;
  }
}
