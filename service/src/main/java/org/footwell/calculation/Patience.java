package org.footwell.calculation;

/** Whether there is time left for searching; asked now and then by what answers with the best found so far. */
@FunctionalInterface
public interface Patience {
  boolean lasts();
}
