package org.footwell.vehicle.sheets;

import org.footwell.calculation.text.Words;

/** What stands on the sheet of packages. */
public enum PackagesWords implements Words {
  TITLE,
  VEHICLE,
  PACKAGE,
  IN_IT,
  GOES_IN,
  STAYS_IN,
  LEVEL,
  LOWEST,
  HEAVIER,
  PRICE_OF_PARTS,
  PRICE_WITH_TAX,
  NONE,
  MEANS
}
