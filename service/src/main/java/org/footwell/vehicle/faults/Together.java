package org.footwell.vehicle.faults;

import org.footwell.calculation.text.Words;

/** How the faults of one explanation are said in one sentence. */
enum Together implements Words {
  NOTHING,
  BOTH
}
