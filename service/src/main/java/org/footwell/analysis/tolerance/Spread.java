package org.footwell.analysis.tolerance;

import org.footwell.calculation.text.Words;

/** How a number and how far it may be off are said. */
enum Spread implements Words {
  SPREAD
}
