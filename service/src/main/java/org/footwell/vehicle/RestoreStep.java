package org.footwell.vehicle;

import org.footwell.calculation.text.Words;

/** What is done to bring a vehicle back to how it left the factory, in order; common practice, no source. */
public enum RestoreStep implements Words {
  /** Factory parts that were taken out, to be kept. */
  KEEP,
  /** Drivers and amplifiers of the plan: those it brought in go, with cables, rings and boxes. */
  TAKE_OUT,
  /** Factory parts that go back into their places, onto their own plugs. */
  PLUG_BACK,
  /** Outputs of the head unit that get their own loudspeakers again. */
  RECONNECT,
  /** What was never taken out. */
  STAYS,
  /** Sounds that the vehicle makes through its loudspeakers. */
  CHECK_CHIMES
}
