package org.footwell.acoustic.alignment;

import org.footwell.calculation.text.Words;

/** Words in the sentences about delays. */
enum AlignmentWords implements Words {
  FALSE_WITH_FILTERS,
  ANY_CHANNEL_AT
}
