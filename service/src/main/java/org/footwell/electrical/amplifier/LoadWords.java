package org.footwell.electrical.amplifier;

import org.footwell.calculation.Words;

/** Words in sentences about loads. */
enum LoadWords implements Words {
  PER_CHANNEL,
  BRIDGED,
  CURRENT_AT_PEAKS
}
