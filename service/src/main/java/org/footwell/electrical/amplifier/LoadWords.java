package org.footwell.electrical.amplifier;

import org.footwell.calculation.text.Words;

/** Words in sentences about loads. */
enum LoadWords implements Words {
  PER_CHANNEL,
  BRIDGED,
  CURRENT_AT_PEAKS,
  OHM_OF_SAG,
  TWICE_INTO_HALF,
  SPREAD,
  SQUARE_WAVE,
  BELOW_RAIL,
  SINGLE_BESIDE_BRIDGED,
  BRIDGED_RATINGS
}
