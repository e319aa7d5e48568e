package org.footwell.calculation.text;

/** Words in sentences of the core. */
public enum CoreWords implements Words {
  /** What parts a number from its decimals. */
  DECIMAL_MARK,
  /** What parts its thousands. */
  GROUPING_MARK,
  THE_REQUEST,
  DID_YOU_MEAN,
  BY_FORMULA,
  OR
}
