package org.footwell.electrical.passive;

import org.footwell.calculation.text.Words;

/** What a filter or a network cannot do without. */
enum PassiveWords implements Words {
  DRIVER_TO_COMPENSATE,
  DRIVER_IN_THE_BOX,
  RESISTANCE_IN_THE_LOOP,
  CAPACITOR,
  COIL,
  RESISTOR
}
