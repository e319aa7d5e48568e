package org.footwell.electrical.impedance;

import org.footwell.calculation.text.Words;

/** What a second table of readings tells. */
enum TableWords implements Words {
  MOVING_MASS,
  VAS,
  PEAK,
  VOLUME,
  HIGHER_Q,
  NO_END
}
