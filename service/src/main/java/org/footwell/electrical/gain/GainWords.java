package org.footwell.electrical.gain;

import org.footwell.calculation.text.Words;

/** Words in sentences about a chain. */
enum GainWords implements Words {
  INPUT,
  OUTPUT,
  SOURCE,
  STAGE
}
