package org.footwell.vehicle.curves;

import org.footwell.calculation.text.Words;

/** What stands at the plots. */
enum CurveWords implements Words {
  RESPONSE,
  IMPEDANCE,
  MOVEMENT,
  HEADROOM,
  FREQUENCY,
  LEVEL,
  OHM,
  PART_OF_TRAVEL,
  DRIVE_LEFT,
  TOGETHER,
  WANTED,
  SMALLEST_LOAD,
  TRAVEL,
  NOTHING_LEFT
}
