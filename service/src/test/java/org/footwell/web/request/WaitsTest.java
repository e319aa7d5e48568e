package org.footwell.web.request;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Proxy;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.util.thread.ScheduledExecutorScheduler;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Callers that are waited for, where there is room for one. */
class WaitsTest {

  private static final Pace PACE = new Pace(Duration.ofSeconds(10), 16_384, Duration.ofMinutes(5));
  private static final long LONG_NS = TimeUnit.SECONDS.toNanos(60);

  private final ScheduledExecutorScheduler scheduler = new ScheduledExecutorScheduler();
  private final AtomicLong now = new AtomicLong();
  private final Semaphore room = new Semaphore(1);
  private final Watch watch = new Watch();

  @BeforeEach
  void start() throws Exception {
    scheduler.start();
  }

  @AfterEach
  void stop() throws Exception {
    scheduler.stop();
  }

  private Waits waits() {
    return new Waits(PACE, room, watch, now::get);
  }

  /** A connection whose closing ends the write that waits for its caller. */
  private static EndPoint closing(CountDownLatch closed) {
    return (EndPoint)
        Proxy.newProxyInstance(
            EndPoint.class.getClassLoader(),
            new Class<?>[] {EndPoint.class},
            (proxy, method, arguments) -> {
              assertEquals("close", method.getName());
              closed.countDown();
              return null;
            });
  }

  /** Has a caller take nothing until its connection is closed. */
  private void takeNothing(CountDownLatch closed, long withinNs) {
    try {
      waits().forTaking(() -> await(closed), withinNs, closing(closed), scheduler);
    } catch (IOException impossible) {
      throw new AssertionError(impossible);
    }
  }

  private static void await(CountDownLatch closed) {
    try {
      assertTrue(closed.await(10, TimeUnit.SECONDS), "not closed within ten seconds");
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void whereThereIsNoRoomTheConnectionOfASlowReaderIsClosed() {
    assertTrue(room.tryAcquire());
    takeNothing(new CountDownLatch(1), LONG_NS);
    assertEquals(0, room.availablePermits());
  }

  @Test
  void aSlowReaderTakesRoomUntilItsTimeIsOver() {
    CountDownLatch closed = new CountDownLatch(1);
    CompletableFuture<Void> slow = CompletableFuture.runAsync(() -> takeNothing(closed, LONG_NS));
    while (room.availablePermits() > 0 && !slow.isDone()) {
      Thread.onSpinWait();
    }
    // The next finds no room, while the first is still waited for.
    takeNothing(new CountDownLatch(1), LONG_NS);
    assertEquals(1, closed.getCount());
    closed.countDown();
    slow.join();
    assertEquals(1, room.availablePermits());
  }

  @Test
  void aReaderWhoseTimeIsOverIsClosedWithRoomToo() {
    takeNothing(new CountDownLatch(1), TimeUnit.MILLISECONDS.toNanos(150));
    assertEquals(1, room.availablePermits());
  }

  @Test
  void whatIsTakenAtOnceNeedsNoRoom() throws IOException {
    assertTrue(room.tryAcquire());
    CountDownLatch closed = new CountDownLatch(1);
    waits().forTaking(() -> now.addAndGet(5), LONG_NS, closing(closed), scheduler);
    assertEquals(1, closed.getCount());
  }

  @Test
  void aBodyThatIsWaitedForNeedsRoomAndGivesItBack() throws IOException {
    Waits waits = waits();
    assertEquals(
        7,
        waits.forMore(
            () -> {
              ProblemException refused =
                  assertThrows(ProblemException.class, () -> waits().forMore(() -> 1));
              assertEquals(ProblemType.BUSY, refused.type());
              now.addAndGet(30);
              return 7;
            }));
    assertThrows(
        IOException.class,
        () ->
            waits.forMore(
                () -> {
                  now.addAndGet(12);
                  throw new IOException("gone");
                }));
    assertEquals(42, waits.ns());
    assertEquals(1, room.availablePermits());
  }
}
