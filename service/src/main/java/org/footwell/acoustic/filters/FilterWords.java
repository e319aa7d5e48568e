package org.footwell.acoustic.filters;

import org.footwell.calculation.text.Words;

/** Words in sentences about filters. */
enum FilterWords implements Words {
  WITH_POLARITY
}
