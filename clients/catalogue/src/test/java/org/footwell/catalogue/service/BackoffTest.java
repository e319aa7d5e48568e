package org.footwell.catalogue.service;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class BackoffTest {

  private static final Backoff LEAST = new Backoff(() -> 0);
  private static final Backoff MOST = new Backoff(() -> 1);

  @Test
  void eachWaitIsTwiceTheOneBeforeUpToALongest() {
    assertEquals(Duration.ofMillis(500), MOST.after(1, Duration.ZERO));
    assertEquals(Duration.ofSeconds(1), MOST.after(2, Duration.ZERO));
    assertEquals(Duration.ofSeconds(8), MOST.after(5, Duration.ZERO));
    assertEquals(Duration.ofSeconds(30), MOST.after(8, Duration.ZERO));
    assertEquals(Duration.ofSeconds(30), MOST.after(100, Duration.ZERO));
  }

  @Test
  void halfOfAWaitIsChance() {
    assertEquals(Duration.ofMillis(250), LEAST.after(1, Duration.ZERO));
    assertEquals(Duration.ofSeconds(15), LEAST.after(100, Duration.ZERO));
  }

  @Test
  void neverSoonerThanTheServiceAskedFor() {
    assertEquals(Duration.ofSeconds(7), LEAST.after(1, Duration.ofSeconds(7)));
    assertEquals(Duration.ofMillis(7500), MOST.after(1, Duration.ofSeconds(7)));
    assertEquals(Duration.ofSeconds(30), MOST.after(9, Duration.ofSeconds(7)));
  }
}
