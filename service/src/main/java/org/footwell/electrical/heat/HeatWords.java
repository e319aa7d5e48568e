package org.footwell.electrical.heat;

import org.footwell.calculation.text.Words;

/** Words in the sentences about heat. */
enum HeatWords implements Words {
  QUIESCENT_CURRENT,
  CLASS_D_LOSSES
}
