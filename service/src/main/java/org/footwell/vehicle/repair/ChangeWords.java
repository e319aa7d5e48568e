package org.footwell.vehicle.repair;

import org.footwell.calculation.text.Words;

/** How a change is said that only takes something away. */
enum ChangeWords implements Words {
  AS_ADVISED
}
