package org.footwell.factory.rolloff;

import org.footwell.calculation.text.Words;

/** Words in sentences about volume steps. */
enum StepWords implements Words {
  BAND_AT_STEP,
  BANDS_BELOW
}
