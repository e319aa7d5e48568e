package org.footwell.web.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** What is remembered of callers, however many there are. */
class CallersTest {

  private static final int STRANGERS = 100_000;

  private final AtomicLong now = new AtomicLong();
  private final CallerRules rules = new CallerRules(Keys.NONE, 60, 10, 2, Proxies.NONE);
  private final Callers callers = new Callers(rules, Admission.clock(now::get));

  private void pass(int strangers) {
    for (int i = 0; i < strangers; i++) {
      callers.of(Integer.toHexString(i)).call();
    }
  }

  @Test
  void aHundredThousandAddressesTakeUpABoundedNumberOfBuckets() {
    pass(STRANGERS);
    assertEquals(Callers.MOST, callers.count());
  }

  @Test
  void whoeverCallsStaysRememberedWhileStrangersComeAndGo() {
    Caller regular = callers.of("key shop");
    for (int i = 0; i < STRANGERS; i++) {
      callers.of(Integer.toHexString(i));
      if (i % 5_000 == 0) {
        assertSame(regular, callers.of("key shop"));
      }
    }
  }

  @Test
  void whoeverIsForgottenBeginsAnew() {
    Caller spent = callers.of("key shop");
    for (int i = 0; i < 10; i++) {
      assertTrue(spent.call().isConsumed());
    }
    assertFalse(spent.call().isConsumed());
    pass(Callers.MOST);
    assertNotSame(spent, callers.of("key shop"));
    assertTrue(callers.of("key shop").call().isConsumed());
  }

  @Test
  void whoeverHasARequestUnderWayIsNotForgotten() {
    Caller busy = callers.of("key shop");
    assertTrue(busy.begin());
    pass(STRANGERS);
    assertSame(busy, callers.of("key shop"));
    assertEquals(Callers.MOST, callers.count());
    busy.end(0);
    pass(STRANGERS);
    assertNotSame(busy, callers.of("key shop"));
  }

  @Test
  void nobodyEverOwesMoreThanMayBeSavedUp() {
    Caller caller = callers.of("key shop");
    for (int i = 0; i < 3; i++) {
      assertTrue(caller.begin());
      caller.end(1_000_000);
    }
    assertEquals(Duration.ofSeconds(11).toNanos(), caller.call().getNanosToWaitForRefill());
    now.addAndGet(Duration.ofSeconds(11).toNanos());
    assertTrue(caller.call().isConsumed());
    assertFalse(caller.call().isConsumed());
  }

  @Test
  void workIsPaidForAfterwards() {
    Caller caller = callers.of("key shop");
    caller.call();
    assertTrue(caller.begin());
    caller.end(4);
    assertEquals(4, caller.call().getRemainingTokens());
  }

  @Test
  void requestsUnderWayHaveAMost() {
    Caller caller = callers.of("key shop");
    assertTrue(caller.begin());
    assertTrue(caller.begin());
    assertFalse(caller.begin());
    caller.end(0);
    assertTrue(caller.begin());
    assertEquals(2, caller.underWay());
  }
}
