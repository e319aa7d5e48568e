package org.footwell.fitting.ring;

import org.footwell.calculation.text.Words;

/** Words in sentences about a ring. */
enum RingWords implements Words {
  RINGS_THICKNESS,
  MILLIMETRES,
  DRIVER_CUT_OUT,
  FRAME,
  PANEL_LIMIT,
  ON_THE_FRAME,
  OUTSIDE_CUT_OUT,
  OVAL_TURN,
  MORE_THAN,
  LESS_THAN,
  APART,
  RING_THAT_FITS
}
