package org.footwell.acoustic.exposure;

import org.footwell.calculation.text.Words;

/** Units of weighted levels in sentences. */
enum ExposureWords implements Words {
  DBA,
  DBC,
  BAND_OF
}
