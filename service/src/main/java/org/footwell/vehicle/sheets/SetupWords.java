package org.footwell.vehicle.sheets;

import org.footwell.calculation.text.Words;

/** Words around the rows of the setup sheet. */
enum SetupWords implements Words {
  TITLE,
  MAIN_SEAT,
  FILTER,
  BACK_TO_FACTORY,
  VERDICT
}
