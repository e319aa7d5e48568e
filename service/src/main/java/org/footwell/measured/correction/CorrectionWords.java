package org.footwell.measured.correction;

import org.footwell.calculation.text.Words;

/** Words in the sentences about correction. */
enum CorrectionWords implements Words {
  THIRD_OCTAVE_WIDE
}
