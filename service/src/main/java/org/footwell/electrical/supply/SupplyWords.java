package org.footwell.electrical.supply;

import org.footwell.calculation.text.Words;

/** Words in sentences about a supply. */
enum SupplyWords implements Words {
  CANNOT_DRAW,
  SEES_AND_GIVES,
  SEES_BUT_NEEDS,
  GROUP,
  INSTALLED_SIZES
}
