package org.footwell.measured.sum;

import org.footwell.calculation.text.Words;

/** Words in sentences about a sum. */
enum SumWords implements Words {
  AND_DELAY
}
