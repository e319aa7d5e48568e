package org.footwell.vehicle.packages;

/** Whether there is time left for searching; asked now and then. */
interface Patience {
  boolean lasts();
}
