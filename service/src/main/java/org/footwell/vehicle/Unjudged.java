package org.footwell.vehicle;

import org.footwell.calculation.text.Words;

/** What a plan may not say enough for. */
public enum Unjudged implements Words {
  LEVEL,
  HEAT,
  MOVEMENT,
  LOWEST_LOAD,
  CROSSOVER_WINDOW,
  CURRENT,
  SUPPLY_VOLTAGE,
  CABLE_AND_FUSE,
  GAIN_TARGET,
  SMALLEST_LOAD,
  ENCLOSURE,
  REPLACEMENT
}
