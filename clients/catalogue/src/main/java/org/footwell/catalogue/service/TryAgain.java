package org.footwell.catalogue.service;

import java.time.Duration;

/** It did not work this time but may the next: the service was busy, away or stopping. */
final class TryAgain extends Exception {

  private static final long serialVersionUID = 1L;

  /** How long the service asked to be left alone, zero if it did not say. */
  private final transient Duration notBefore;

  TryAgain(String why, Duration notBefore) {
    super(why);
    this.notBefore = notBefore;
  }

  TryAgain(String why) {
    this(why, Duration.ZERO);
  }

  Duration notBefore() {
    return notBefore;
  }
}
