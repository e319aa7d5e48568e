package org.footwell.fitting.ring;

import org.footwell.calculation.Words;

/** Words in sentences about a ring. */
enum RingWords implements Words {
  RINGS_THICKNESS,
  MILLIMETRES,
  DRIVER_CUT_OUT,
  FRAME,
  PANEL_LIMIT
}
