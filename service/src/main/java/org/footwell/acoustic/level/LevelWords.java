package org.footwell.acoustic.level;

import org.footwell.calculation.text.Words;

/** Words in sentences about level. */
public enum LevelWords implements Words {
  PER_WATT,
  AT_2_83_V
}
