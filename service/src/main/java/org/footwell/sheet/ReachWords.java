package org.footwell.sheet;

import org.footwell.calculation.text.Words;

/** How low something plays against what was there. */
public enum ReachWords implements Words {
  LOWER,
  HIGHER,
  AS_LOW
}
