package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.footwell.RunningJar;
import org.footwell.acoustic.driver.CatalogueSample;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Long catalogues through the built service with a heap of 128 MB, by callers of both kinds. */
@Timeout(value = 3, unit = TimeUnit.MINUTES)
@Tag("long")
class LargeBatchIT {

  /** So much is read of a body before the first row of the answer is written. */
  private static final int READ_FIRST_BYTES = 2 << 20;

  /** About 30 MB: far more than all buffers on the way can hold. */
  private static final int ROWS = 200_000;

  private static final String TARGET = "/v1/driver-check/batch?columns=verdict";

  private static RunningJar service;
  private static List<String> catalogue;

  @BeforeAll
  static void start(@TempDir Path folder) throws IOException, InterruptedException {
    Path file = folder.resolve("catalogue.csv");
    CatalogueSample.write(CatalogueSample.rows(5_000, 1), file);
    catalogue = Files.readAllLines(file);
    service = new RunningJar("-Xmx128m");
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  private static RowsOverSocket send() throws IOException {
    return new RowsOverSocket(service.address(), TARGET, catalogue, ROWS);
  }

  private static void assertEveryRowInOrder(RowsOverSocket caller, int from) throws IOException {
    for (int i = from; i < ROWS; i++) {
      String line = caller.readLine();
      assertEquals(i, Integer.parseInt(line.substring(0, 7)), line);
    }
    assertEquals(null, caller.readLine());
  }

  @Test
  void theFirstAnswerLeavesBeforeTheLastRowIsSentAndAllKeepTheirOrder() throws IOException {
    try (RowsOverSocket caller = send()) {
      assertTrue(caller.readLine().endsWith(",verdict,findings,error"));
      String first = caller.readLine();
      int sent = caller.sent();
      assertTrue(first.startsWith("0000000,"), first);
      assertTrue(sent < ROWS, () -> sent + " rows were sent");
      assertEveryRowInOrder(caller, 1);
    }
  }

  @Test
  void aCallerThatDoesNotReadStopsTheServiceInsteadOfFillingItsMemory() throws Exception {
    try (RowsOverSocket caller = send()) {
      caller.readLine();
      int before = -1;
      while (caller.sent() != before) {
        before = caller.sent();
        Thread.sleep(1000);
      }
      int stalledAt = before;
      assertTrue(stalledAt < ROWS / 2, () -> "stalled only after " + stalledAt + " rows");
      assertEveryRowInOrder(caller, 0);
    }
  }

  /** The client of the JDK reads nothing before all is sent. */
  @Test
  void aCallerThatReadsNothingBeforeAllIsSentIsAnsweredUpToTheStatedSize() throws Exception {
    StringBuilder body = new StringBuilder(catalogue.get(0)).append('\n');
    int rows = 0;
    while (body.length() + 1000 < READ_FIRST_BYTES) {
      body.append(catalogue.get(1 + rows % 5_000)).append('\n');
      rows++;
    }
    HttpResponse<String> response =
        HttpClient.newHttpClient()
            .send(
                HttpRequest.newBuilder(service.address().resolve("/v1/driver-check/batch"))
                    .header("Content-Type", "text/csv")
                    .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                    .build(),
                HttpResponse.BodyHandlers.ofString());
    assertEquals(200, response.statusCode());
    assertEquals(rows + 1, response.body().lines().count());
    assertTrue(
        response.body().length() > 2 * body.length(), "the answer is longer than all buffers");
  }
}
