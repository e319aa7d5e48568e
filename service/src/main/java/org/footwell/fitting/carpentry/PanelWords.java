package org.footwell.fitting.carpentry;

import org.footwell.calculation.text.Words;

/** What dimensions a box may have. */
enum PanelWords implements Words {
  LARGER_DIMENSIONS,
  LESS_LEAN,
  BELOW_BOTTOM_DEPTH,
  TWO_DIMENSIONS,
  GIVEN,
  GIVEN_AND_PROPORTIONS
}
