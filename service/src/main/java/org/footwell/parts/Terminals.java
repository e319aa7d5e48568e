package org.footwell.parts;

/** What hangs on the amplifier while the target is measured. */
public enum Terminals {
  /** Nothing but the meter. */
  OPEN,
  /** The load. */
  LOADED
}
