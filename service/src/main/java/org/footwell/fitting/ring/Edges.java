package org.footwell.fitting.ring;

import org.footwell.calculation.text.Words;

/** What a wall of a ring stands between. */
enum Edges implements Words {
  OUTER_AND_INNER,
  FACTORY_AND_OUTER,
  FACTORY_AND_INNER,
  PILOT_AND_OUTER,
  PILOT_AND_INNER,
  PILOT_AND_FACTORY
}
