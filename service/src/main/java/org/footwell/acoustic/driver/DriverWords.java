package org.footwell.acoustic.driver;

import org.footwell.calculation.text.Words;

/** Words in sentences about data sheets. */
enum DriverWords implements Words {
  THROUGH,
  PATH,
  FOR_ONE_WATT,
  AT_2_83_V,
  GIVES,
  OR_BOTH_Q,
  SUSPECT,
  SUSPECT_WOULD_BE,
  IN_UNIT,
  IN_INCHES,
  IN_SQUARE_INCHES,
  IN_CUBIC_FEET,
  POINT_LEFT,
  POINT_RIGHT,
  NUMBER,
  EITHER
}
