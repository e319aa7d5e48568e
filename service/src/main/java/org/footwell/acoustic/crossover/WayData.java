package org.footwell.acoustic.crossover;

import org.footwell.calculation.text.Words;

/** What is not known of a way without one of its figures. */
enum WayData implements Words {
  HOW_FAR_IT_MOVES,
  THE_ORDER_IT_NEEDS,
  ITS_POWER_AND_VOLTAGE,
  WHETHER_IT_TAKES_ITS_POWER
}
