package org.footwell.factory.clip;

import org.footwell.calculation.text.Words;

/** Words in sentences about tones. */
enum ToneWords implements Words {
  PERIODS,
  AT_LEAST_PERIODS
}
