package org.footwell.electrical.supply;

import org.footwell.calculation.text.Words;

/** When a supply is judged. */
enum When implements Words {
  AT_CRUISE,
  AT_IDLE,
  AT_LOW_VOLTAGE,
  ENGINE_OFF,
  STARTING
}
