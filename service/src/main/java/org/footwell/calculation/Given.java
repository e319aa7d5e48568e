package org.footwell.calculation;

/** What was given, where that is no single value. */
enum Given implements Words {
  TOO_LARGE,
  GROUP,
  LIST,
  ENTRIES,
  NONE_OF_THEM,
  MORE_THAN_ONE
}
