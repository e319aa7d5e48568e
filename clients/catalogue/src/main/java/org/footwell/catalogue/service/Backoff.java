package org.footwell.catalogue.service;

import java.time.Duration;
import java.util.function.DoubleSupplier;

/**
 * How long to wait before trying again: twice as long each time, half of it by chance, so that
 * callers who were turned away together do not come back together.
 *
 * @param chance from 0 to 1
 */
record Backoff(DoubleSupplier chance) {

  private static final Duration FIRST = Duration.ofMillis(500);
  private static final Duration LONGEST = Duration.ofSeconds(30);
  private static final int MOST_DOUBLINGS = 10;

  /**
   * The wait after a failure.
   *
   * @param failures how many there were in a row, from 1
   * @param notBefore what the service asked for
   */
  Duration after(int failures, Duration notBefore) {
    long doubled = FIRST.toMillis() << Math.min(failures - 1, MOST_DOUBLINGS);
    long most = Math.min(doubled, LONGEST.toMillis());
    Duration own = Duration.ofMillis(Math.round(most * (0.5 + 0.5 * chance.getAsDouble())));
    if (own.compareTo(notBefore) >= 0) {
      return own;
    }
    return notBefore.plusMillis(Math.round(FIRST.toMillis() * chance.getAsDouble()));
  }
}
