package org.footwell.vehicle.chain;

import org.footwell.calculation.text.Words;

/** What ends the level of a channel. */
public enum Limit implements Words {
  /** Full scale of the source: the gain is set so that the amplifier just does not clip there. */
  FULL_SCALE,
  /** The amplifier clips: a filter lifts more than the trim takes away. */
  CLIPPING,
  /** The continuous power of a driver. */
  HEAT,
  /** The travel of a cone. */
  MOVEMENT
}
