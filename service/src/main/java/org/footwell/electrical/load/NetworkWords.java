package org.footwell.electrical.load;

import org.footwell.calculation.text.Words;

/** Words in sentences about networks of coils. */
enum NetworkWords implements Words {
  CURRENT_PER_VOLT,
  SHARE,
  OHM_OR_MORE,
  OHM_FROM_TO,
  NEAREST_BELOW,
  NEAREST_ABOVE,
  THE_END,
  UNPRINTABLE,
  CHARACTER,
  PART,
  OPERATOR,
  OPERATOR_OR_END,
  OPERATOR_OR_CLOSING,
  PARALLEL,
  WITH_POINT,
  COILS_IN_ALL,
  COILS_ALIKE,
  COILS_UNLIKE,
  OHM_OR_NAME
}
