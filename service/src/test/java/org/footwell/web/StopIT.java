package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.footwell.RunningJar;
import org.footwell.vehicle.PlanReview;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built service is told to terminate while it is busy, five times, and loses nothing. */
@Tag("long")
class StopIT {

  private static final int DELAY_MS = 1_500;
  private static final int CALLERS = 8;

  /** In all a batch goes on for 6 s after the port has closed, with pauses above a second. */
  private static final int ROWS_AFTERWARDS = 4;

  private static final int PAUSE_MS = 1_500;

  /** For ending the process when nothing is under way any more, on a busy machine. */
  private static final Duration END = Duration.ofSeconds(5);

  /** The status of a process that was told to terminate. */
  private static final int TERMINATED = 128 + 15;

  @TempDir Path folder;

  private RunningJar start(int finishMs) throws IOException, InterruptedException {
    return new RunningJar(
        Map.of(
            "FOOTWELL_STOP_DELAY_MS", Integer.toString(DELAY_MS),
            "FOOTWELL_STOP_MS", Integer.toString(finishMs)),
        ProcessBuilder.Redirect.to(printed().toFile()),
        "-Xmx128m");
  }

  private Path printed() {
    return folder.resolve("printed");
  }

  private void assertNoStackTraceWasPrinted() throws IOException {
    String text = Files.readString(printed());
    assertFalse(text.contains("\n\tat ") || text.contains(" ERROR "), text);
  }

  private static HttpRequest post(URI service, String path, String body) {
    return HttpRequest.newBuilder(service.resolve(path))
        .timeout(Duration.ofSeconds(30))
        .header("Content-Type", "application/json")
        .POST(HttpRequest.BodyPublishers.ofString(body))
        .build();
  }

  @RepeatedTest(5)
  void nothingIsLost() throws Exception {
    try (RunningJar service = start(30_000);
        SlowBatch batch = new SlowBatch(service.port())) {
      Example plan = Example.of(new PlanReview());
      List<HttpRequest> questions =
          List.of(
              post(service.address(), SoundLevelCalls.PATH, SoundLevelCalls.GOOD),
              post(service.address(), plan.path(), plan.question().toString()));
      ReadinessWatch watch = new ReadinessWatch(service.address());
      List<KeptAliveCaller> callers =
          IntStream.range(0, CALLERS)
              .mapToObj(i -> new KeptAliveCaller(questions.get(i % 2), watch))
              .toList();
      callers.forEach(KeptAliveCaller::awaitFirstAnswer);
      service.terminate();
      long noticeMs = watch.noticeBeforeThePortClosed().toMillis();
      assertTrue(
          noticeMs > DELAY_MS / 2, () -> "not ready " + noticeMs + " ms before the port closed");
      callers.forEach(KeptAliveCaller::answered);
      for (int i = 0; i < ROWS_AFTERWARDS; i++) {
        Thread.sleep(PAUSE_MS);
        batch.row();
      }
      batch.whole();
      assertEquals(TERMINATED, service.endedWithin(END));
      assertNoStackTraceWasPrinted();
    }
  }

  @Test
  void whatIsNotDoneInTheStatedTimeIsBrokenOffInASentence() throws Exception {
    int finishMs = 500;
    try (RunningJar service = start(finishMs);
        SlowBatch batch = new SlowBatch(service.port())) {
      service.terminate();
      Duration stated = Duration.ofMillis(DELAY_MS + finishMs);
      assertEquals(TERMINATED, service.endedWithin(stated.plus(END)));
      assertFalse(batch.rest().endsWith("0\r\n\r\n"), "no caller may take this for the whole");
      assertNoStackTraceWasPrinted();
      String text = Files.readString(printed());
      assertTrue(text.contains("broken off, not done within 500 ms: 1 of the requests"), text);
    }
  }
}
