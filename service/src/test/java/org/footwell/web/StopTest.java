package org.footwell.web;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ConnectException;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What callers see of a service that stops: word of it, then a closed port, and every answer. */
@Timeout(value = 60, unit = SECONDS)
@Tag("long")
class StopTest {

  private Server server;

  private void start(int delayMs, int finishMs) {
    server =
        RunningServer.start(
            Map.of(
                "FOOTWELL_STOP_DELAY_MS", Integer.toString(delayMs),
                "FOOTWELL_STOP_MS", Integer.toString(finishMs)));
  }

  @AfterEach
  void close() {
    server.close();
  }

  private CompletableFuture<Void> stop() {
    return CompletableFuture.runAsync(server::close);
  }

  private static void get(RawConnection connection, String address) throws IOException {
    connection.send("GET " + address + " HTTP/1.1\r\nHost: localhost\r\n\r\n");
  }

  private String ready() throws IOException {
    try (RawConnection connection = new RawConnection(server.port())) {
      get(connection, "/health/ready");
      return connection.readUntil("}");
    }
  }

  private void untilItIsNotReady() throws IOException {
    while (ready().startsWith("HTTP/1.1 200 ")) {
      Thread.onSpinWait();
    }
  }

  private static void untilNobodyGetsIn(int port) {
    assertThrows(
        ConnectException.class,
        () -> {
          while (true) {
            new RawConnection(port).close();
          }
        });
  }

  @Test
  void firstItIsNotReadyButTakesRequestsAndSendsCallersElsewhere() throws IOException {
    start(2_000, 10_000);
    try (RawConnection keptAlive = new RawConnection(server.port())) {
      get(keptAlive, PATH + "?" + QUERY);
      assertFalse(keptAlive.readUntil("]}").contains("Connection: close"));
      int port = server.port();
      CompletableFuture<Void> stopped = stop();
      untilItIsNotReady();
      String refused = ready();
      assertTrue(refused.startsWith("HTTP/1.1 503 "), refused);
      assertTrue(refused.contains("Not ready: starting or stopping."), refused);

      get(keptAlive, PATH + "?" + QUERY);
      String last = keptAlive.readAll();
      assertTrue(last.startsWith("HTTP/1.1 200 "), last);
      assertTrue(last.contains("\r\nConnection: close\r\n"), last);
      assertTrue(last.endsWith("]}"), last);
      try (SlowBatch late = new SlowBatch(port)) {
        assertTrue(late.whole().contains("\r\nConnection: close\r\n"));
      }
      assertFalse(stopped.isDone(), "all that within the delay");
      stopped.join();
      untilNobodyGetsIn(port);
    }
  }

  @Test
  void thenThePortClosesAndWhatWasAcceptedIsFinished() throws Exception {
    start(0, 20_000);
    try (SlowBatch batch = new SlowBatch(server.port());
        RawConnection idle = new RawConnection(server.port())) {
      int port = server.port();
      CompletableFuture<Void> stopped = stop();
      untilNobodyGetsIn(port);
      batch.row();
      Thread.sleep(1_500); // longer than a server that stops waits for idle connections by itself
      batch.row();
      get(idle, PATH + "?" + QUERY);
      assertTrue(idle.readAll().contains("\r\nConnection: close\r\n"));
      assertFalse(stopped.isDone(), "it waits for the batch");
      batch.whole();
      assertEquals("", batch.rest());
      stopped.join();
    }
  }

  @Test
  void whatIsNotDoneInTimeIsBrokenOff() throws IOException {
    start(0, 300);
    try (SlowBatch batch = new SlowBatch(server.port())) {
      long begin = System.nanoTime();
      stop().join();
      long tookMs = (System.nanoTime() - begin) / 1_000_000;
      assertTrue(tookMs >= 300 && tookMs < 10_000, () -> tookMs + " ms");
      assertFalse(batch.rest().endsWith("0\r\n\r\n"), "no caller may take this for the whole");
    }
  }

  @Test
  void withNothingUnderWayItEndsAtOnce() {
    start(0, 60_000);
    long begin = System.nanoTime();
    stop().join();
    long tookMs = (System.nanoTime() - begin) / 1_000_000;
    assertTrue(tookMs < 10_000, () -> tookMs + " ms");
  }
}
