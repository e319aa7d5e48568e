package org.footwell.acoustic.crossover;

import org.footwell.calculation.text.Words;

/** What moves an end of the window for a crossover. */
enum Remedy implements Words {
  LOWER_RESONANCE,
  LOWER_LEVEL,
  STEEPER_ORDER,
  UPPER_MORE_TRAVEL,
  UPPER_MORE_POWER,
  UPPER_ALLOWED_LOWER,
  PROCESSOR_LOWER,
  SMALLER_LOWER_DRIVER,
  WAY_BETWEEN,
  HIGHER_BEAMING_KA,
  CLOSER_TOGETHER,
  SUBWOOFER_NEARER,
  LOWER_MORE_POWER,
  LOWER_REACHES_HIGHER,
  PROCESSOR_HIGHER
}
