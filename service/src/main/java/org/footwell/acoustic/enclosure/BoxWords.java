package org.footwell.acoustic.enclosure;

import org.footwell.calculation.text.Words;

/** Words in sentences about boxes. */
enum BoxWords implements Words {
  ABOVE_OWN_QTS,
  WITHIN_LOSSES,
  WITH_THIS_PORT,
  QTS_WITH_QL,
  OWN_ALIGNMENT
}
