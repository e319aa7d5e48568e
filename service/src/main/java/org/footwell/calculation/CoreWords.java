package org.footwell.calculation;

/** Words in sentences of the core. */
enum CoreWords implements Words {
  THE_REQUEST,
  DID_YOU_MEAN,
  BY_FORMULA,
  OR
}
