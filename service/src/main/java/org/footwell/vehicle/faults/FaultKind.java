package org.footwell.vehicle.faults;

import org.footwell.calculation.text.Words;

/** What may be wrong in a finished vehicle; simplest first. */
public enum FaultKind implements Words {
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
  /** Its order is another. */
  HIGH_PASS_ORDER,
  /** Its order is another. */
  LOW_PASS_ORDER,
  /** A branch of a passive crossover is bridged by a wire. */
  CROSSOVER_BRIDGED,
  /** No current through one voice coil, which is open or not connected. */
  COIL_OPEN,
  /** The two ends of a voice coil touch. */
  COIL_SHORTED,
  /** Coils are in series instead of in parallel, or the other way round. */
  WIRED_OTHERWISE,
  /** A closed box is not tight. */
  BOX_LEAKS,
  /** Set louder or quieter than the plan says. */
  GAIN_OFF,
  /** A bad joint in the supply of an amplifier. */
  GROUND_RESISTANCE;

  /** Mistakes of a hand are commoner than parts that fail; common practice, no source. */
  private static final double BY_HAND = 3;

  /** How likely it is beside others, before anything is measured. */
  double weight() {
    return switch (this) {
      case POLARITY_INVERTED, WIRES_SWAPPED, COIL_OPEN, WIRED_OTHERWISE, GAIN_OFF -> BY_HAND;
      default -> 1;
    };
  }
}
