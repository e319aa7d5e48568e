package org.footwell.vehicle;

import org.footwell.calculation.Words;

/** Words in the sentences about a plan. */
enum PlanWords implements Words {
  OUTPUTS_OF,
  NEW_PARTS,
  FACTORY_PARTS
}
