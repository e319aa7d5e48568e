package org.footwell.fitting.comparison;

import org.footwell.calculation.text.Words;

/** Words in sentences about the change of a part. */
enum ComparisonWords implements Words {
  AMPLIFIER,
  AMPLIFIER_THAT_STAYS,
  FACTORY_PART,
  ITEM,
  NEW_PART,
  NEW_PART_OF
}
