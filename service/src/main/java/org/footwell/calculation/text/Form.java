package org.footwell.calculation.text;

/** What form a value has, in words that follow "must be". */
public enum Form implements Words {
  NUMBER,
  WHOLE_NUMBER,
  FROM_TO,
  FROM_TO_BELOW,
  ABOVE_TO,
  ABOVE_TO_BELOW,
  DECIMALS,
  TEXT,
  LENGTH,
  PATTERN,
  LIST,
  LIST_OF,
  NUMBERS,
  GROUP,
  TRUE_OR_FALSE,
  ABSENT,
  WITH_DECIMAL_POINT,
  WRITTEN_AS,
  WITH_UNIT
}
