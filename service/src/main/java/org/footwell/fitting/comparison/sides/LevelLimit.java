package org.footwell.fitting.comparison.sides;

import org.footwell.calculation.text.Words;

/** What holds the largest clean level. */
public enum LevelLimit implements Words {
  /** The power the driver takes continuously. */
  THERMAL,
  /** The travel of the cone. */
  DISPLACEMENT,
  /** The amplifier's clean power. */
  AMPLIFIER
}
