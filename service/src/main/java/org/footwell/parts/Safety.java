package org.footwell.parts;

import org.footwell.calculation.Caution;

/** The usual cautions of the trade. */
public enum Safety implements Caution {
  HEARING,
  FIRE,
  BATTERY,
  AIRBAG,
  HEAT,
  RESTRAINT
}
