package org.footwell.catalogue;

import static org.footwell.catalogue.FakeService.busy;
import static org.footwell.catalogue.FakeService.cutAfter;
import static org.footwell.catalogue.FakeService.endingAfter;
import static org.footwell.catalogue.FakeService.exchanging;
import static org.footwell.catalogue.FakeService.properly;
import static org.footwell.catalogue.FakeService.rowsAre;
import static org.footwell.catalogue.FakeService.stalling;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A service that is busy, slow, broken or not there. */
class FakeServiceIT {

  private static final int ROWS = 25;

  @TempDir private Path folder;

  @BeforeEach
  void writeCatalogue() throws IOException {
    Files.writeString(
        folder.resolve("drivers.csv"),
        IntStream.rangeClosed(1, ROWS)
            .mapToObj(i -> "part-" + i + ",4\n")
            .collect(Collectors.joining("", "part_id,rated_ohm\n", "")));
  }

  private Program check(FakeService service, String... options)
      throws IOException, InterruptedException {
    String[] arguments = new String[options.length + 1];
    System.arraycopy(options, 0, arguments, 0, options.length);
    arguments[options.length] = "drivers.csv";
    return Program.run(folder, service.address(), arguments);
  }

  private static void assertCleanOnce(Program program) {
    assertEquals(0, program.code(), program.err());
    assertTrue(program.out().startsWith("drivers.csv: 25 rows: 0 stop, 0 warning, 0 note, 25 ok"));
  }

  @Test
  void aBusyServiceIsAskedAgainAndNotBeforeItSaid() throws Exception {
    for (int status : List.of(429, 503)) {
      try (FakeService service = new FakeService(busy(status, "1"))) {
        Program program = check(service);
        assertCleanOnce(program);
        assertTrue(
            program.err().startsWith("lines 2 to 26: The service is busy. Trying again in 1."),
            program.err());
        assertEquals(2, service.asked.size());
        long waited = service.asked.get(1).atNanos() - service.asked.get(0).atNanos();
        assertTrue(waited >= TimeUnit.SECONDS.toNanos(1));
        assertEquals(service.asked.get(0).body(), service.asked.get(1).body());
      }
    }
  }

  @Test
  void withoutRetryAfterTheWaitsAreItsOwn() throws Exception {
    try (FakeService service = new FakeService(busy(503, null), busy(502, "tomorrow"))) {
      assertCleanOnce(check(service));
      assertEquals(3, service.asked.size());
    }
  }

  @Test
  void aChunkWhoseConnectionIsCutIsSentAgainWholeAndCountedOnce() throws Exception {
    for (boolean stated : List.of(true, false)) {
      try (FakeService service = new FakeService(properly(), cutAfter(3, stated))) {
        Program program =
            check(service, "--chunk-rows", "10", "--parallel", "1", "--junit", "j.xml");
        assertCleanOnce(program);
        assertEquals(
            List.of(10L, 10L, 10L, 5L), service.asked.stream().map(a -> a.rows()).toList());
        assertEquals(service.asked.get(1).body(), service.asked.get(2).body());
        JunitXml xml = JunitXml.read(folder.resolve("j.xml"));
        assertEquals(
            IntStream.rangeClosed(1, ROWS).mapToObj(i -> "part-" + i + ": ok").toList(),
            xml.names());
      }
    }
  }

  @Test
  void anAnswerThatEndsAnywhereWithinARowIsAskedForAgain() throws Exception {
    for (String begun :
        List.of("{", "{\"findings\"", "{\"findings\":[],", "{\"findings\":[{\"level\":", "")) {
      try (FakeService service = new FakeService(endingAfter(3, begun))) {
        Program program = check(service);
        assertCleanOnce(program);
        assertTrue(
            program.err().contains("the answer broke off after 3 of 25 rows. Trying again"),
            program.err());
      }
    }
  }

  @Test
  void anAnswerThatStopsComingIsGivenUpAndAskedForAgain() throws Exception {
    for (boolean within : List.of(true, false)) {
      try (FakeService service = new FakeService(stalling(20_000, within))) {
        Program program = check(service, "--timeout", "1");
        assertCleanOnce(program);
        assertTrue(program.err().contains("no answer within 1 s."), program.err());
      }
    }
  }

  @Test
  void aSlowAnswerIsWaitedFor() throws Exception {
    try (FakeService service = new FakeService(stalling(1_000, true))) {
      Program program = check(service);
      assertCleanOnce(program);
      assertEquals("", program.err());
    }
  }

  @Test
  void aServiceThatStaysBusyEndsTheCheckWithoutReports() throws Exception {
    try (FakeService service =
        new FakeService(properly(), busy(503, null), busy(503, null), busy(503, null))) {
      Program program =
          check(
              service,
              "--chunk-rows=10",
              "--parallel=1",
              "--retries=2",
              "--junit=j",
              "--sarif=s",
              "--markdown=m",
              "--write-baseline=b");
      assertEquals(2, program.code());
      assertTrue(
          program.err().endsWith("lines 12 to 21: The service is busy. Tried 3 times.\n"),
          program.err());
      assertEquals("", program.out());
      try (var left = Files.list(folder)) {
        assertEquals(List.of(folder.resolve("drivers.csv")), left.toList());
      }
    }
  }

  @Test
  void aServiceThatAsksForMuchPatienceIsGivenUp() throws Exception {
    try (FakeService service = new FakeService(busy(429, "3600"))) {
      assertEquals(2, check(service).code());
    }
  }

  @Test
  void aServiceThatIsNotThereIsSaidToBeSo() throws Exception {
    String address;
    try (FakeService service = new FakeService()) {
      address = service.address();
    }
    // Waiting for it would last half a minute at least.
    long start = System.nanoTime();
    Program program = Program.run(folder, address, "drivers.csv");
    assertTrue(System.nanoTime() - start < TimeUnit.SECONDS.toNanos(20));
    assertEquals(2, program.code());
    String sentence = " Is the service started, and is that its address?\n";
    assertEquals(address + " does not answer." + sentence, program.err());
    Program unknown = Program.run(folder, "http://nowhere.invalid", "drivers.csv");
    assertEquals(
        "http://nowhere.invalid does not answer (unknown host)." + sentence, unknown.err());
  }

  @Test
  void aServiceThatWasThereIsWaitedFor() throws Exception {
    try (FakeService service = new FakeService()) {
      service.leaveNext();
      Program program = check(service, "--retries=1");
      assertEquals(2, program.code());
      assertTrue(
          program.err().endsWith(service.address() + " does not answer. Tried 2 times.\n"),
          program.err());
    }
  }

  @Test
  void somethingElseAtTheAddressIsNotTakenForTheService() throws Exception {
    try (FakeService service =
        new FakeService(
            (exchange, asked) -> FakeService.answer(exchange, 200, "text/html", "<p>Welcome"),
            (exchange, asked) -> FakeService.answer(exchange, 404, "text/html", "<p>Nothing"),
            rowsAre("{\"hello\":1}\n"),
            rowsAre("<p>\n"),
            endingAfter(ROWS, FakeService.ANSWER))) {
      for (int i = 0; i < 5; i++) {
        Program program = check(service);
        assertEquals(2, program.code());
        assertEquals(1, program.err().lines().count(), program.err());
        assertTrue(program.err().contains("Footwell"), program.err());
      }
      assertEquals(5, service.asked.size());
    }
  }

  @Test
  void rowsKeepTheirOrderWhenALaterChunkIsAnsweredFirst() throws Exception {
    try (FakeService service = new FakeService(stalling(1_500, false))) {
      Program program = check(service, "--chunk-rows=5", "--parallel=4", "--junit=j.xml");
      assertCleanOnce(program);
      assertEquals(
          IntStream.rangeClosed(1, ROWS).mapToObj(i -> "part-" + i + ": ok").toList(),
          JunitXml.read(folder.resolve("j.xml")).names());
    }
  }

  @Test
  void answersThatHaveChangedPlacesAreNoticed() throws Exception {
    String problem =
        "{\"type\":\"/problems/invalid\",\"title\":\"No.\",\"status\":422,\"line\":LINE}\n";
    String first = problem.replace("LINE", "1");
    String second = problem.replace("LINE", "2");
    try (FakeService service =
        new FakeService(
            exchanging(FakeService.ANSWER, FakeService.ANSWER),
            exchanging(first, second),
            exchanging(FakeService.ANSWER, second))) {
      Program program = check(service);
      assertCleanOnce(program);
      assertEquals(
          3,
          program
              .err()
              .lines()
              .filter(
                  line ->
                      line.startsWith(
                          "lines 2 to 26: line 2: the answer is that of another row. Trying again"))
              .count(),
          program.err());
    }
  }

  @Test
  void aProblemWithoutDetailIsToldByItsTitle() throws Exception {
    String problem = "{\"type\":\"about:blank\",\"title\":\"Nobody may.\",\"status\":403}";
    try (FakeService service =
        new FakeService(
            (exchange, asked) ->
                FakeService.answer(exchange, 403, "application/problem+json", problem),
            (exchange, asked) ->
                FakeService.answer(exchange, 403, "application/problem+json", "{}"))) {
      assertEquals("Nobody may.\n", check(service).err());
      assertEquals("HTTP 403.\n", check(service).err());
    }
    String row = "{\"type\":\"/problems/invalid\",\"title\":\"Not this row.\",\"status\":422,";
    try (FakeService service =
        new FakeService(
            (exchange, asked) ->
                FakeService.answer(exchange, 200, "application/x-ndjson", row + "\"line\":1}\n"))) {
      Files.writeString(folder.resolve("drivers.csv"), "part_id,rated_ohm\nA,4\n");
      assertTrue(check(service).out().contains("\n    stop: Not this row.\n"));
    }
  }

  @Test
  void headersAreSentAlong() throws Exception {
    try (FakeService service = new FakeService()) {
      assertCleanOnce(check(service, "--header", "Token: secret"));
      assertEquals("secret", service.asked.get(0).token());
      assertEquals(2, check(service, "--header", "nonsense").code());
    }
  }

  @Test
  void cautionsThatComeWithAnswersAreShown() throws Exception {
    String caution = FakeService.ANSWER.replace("[]}", "[\"Loud sound harms.\"]}");
    try (FakeService service = new FakeService(rowsAre(caution))) {
      Program program = check(service, "--markdown=m.md");
      assertTrue(program.out().contains("\nsafety\n  - Loud sound harms.\n"), program.out());
      assertTrue(
          Files.readString(folder.resolve("m.md")).endsWith("## Safety\n\n- Loud sound harms.\n"));
    }
  }

  @Test
  void aRowOnWhichTheServiceFailsIsNoFindingAboutTheRow() throws Exception {
    String failed =
        "{\"type\":\"/problems/too-slow\",\"title\":\"\",\"status\":503,\"detail\":\"Too slow.\"}\n";
    try (FakeService service = new FakeService(rowsAre(failed))) {
      Program program = check(service);
      assertCleanOnce(program);
      assertTrue(program.err().startsWith("lines 2 to 26: line 2: Too slow. Trying again"));
    }
  }
}
