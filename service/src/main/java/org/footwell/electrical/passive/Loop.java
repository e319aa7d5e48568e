package org.footwell.electrical.passive;

import org.footwell.calculation.text.Words;

/** A way round for current with nothing in it that limits it. */
enum Loop implements Words {
  COIL_AND_CAPACITOR,
  AMPLIFIER_AND_COIL
}
