package org.footwell.vehicle.packages;

import org.footwell.calculation.text.Words;

/** Words about what is offered. */
enum OfferWords implements Words {
  USED_AS,
  MAY_NOT_STAY,
  PARTS_UNLIKE
}
