package org.footwell.parts;

import org.footwell.calculation.text.Words;

/** What hangs on the amplifier while the target is measured. */
public enum Terminals implements Words {
  /** Nothing but the meter. */
  OPEN,
  /** The load. */
  LOADED
}
