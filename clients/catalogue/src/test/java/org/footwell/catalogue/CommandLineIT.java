package org.footwell.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.footwell.RunningJar;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person or a build server meets at the command line, with the built service behind it. */
class CommandLineIT {

  private static final String HEADER = "part_id,rated_ohm,re_ohm,fs_hz,qms,qes,qts\n";
  private static final String CLEAN = "C,4,3.4,38,7.09,0.56,0.52\n";
  private static final String WARNED = "W,4,3.4,38,7.09,0.56,0.47\n";
  private static final String STOPPED = "S,4,3.4,38,7.09,0.56,2.2\n";

  private static RunningJar service;
  @TempDir private Path folder;

  @BeforeAll
  static void start() throws IOException, InterruptedException {
    service = new RunningJar();
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  private Program check(String catalogue, String... arguments)
      throws IOException, InterruptedException {
    Files.writeString(folder.resolve("drivers.csv"), catalogue);
    return run(arguments);
  }

  private Program run(String... arguments) throws IOException, InterruptedException {
    return Program.run(folder, service.address().toString(), arguments);
  }

  private static void assertOneSentence(Program program, String sentence) {
    assertEquals(2, program.code(), program.out());
    assertEquals(sentence + "\n", program.err());
    assertEquals("", program.out());
  }

  @Test
  void theExitCodeFollowsTheLevelToFailOn() throws Exception {
    assertEquals(0, check(HEADER + CLEAN, "drivers.csv").code());
    assertEquals(1, check(HEADER + CLEAN, "--fail-on=note", "drivers.csv").code());
    assertEquals(1, check(HEADER + CLEAN + WARNED, "drivers.csv").code());
    assertEquals(0, run("--fail-on=stop", "drivers.csv").code());
    assertEquals(1, check(HEADER + CLEAN + STOPPED, "--fail-on=STOP", "drivers.csv").code());
  }

  @Test
  void whatCannotBeCheckedEndsWithTwoAndASentence() throws Exception {
    assertOneSentence(run("none.csv"), "There is no file none.csv that can be read.");
    assertOneSentence(check("", "drivers.csv"), "The catalogue is empty: not even a header line.");
    assertOneSentence(check(HEADER, "drivers.csv"), "The catalogue has no rows.");
    assertOneSentence(
        check(HEADER + CLEAN, "--junit=none/junit.xml", "drivers.csv"),
        "none/junit.xml.part cannot be read or written.");
    assertOneSentence(
        run("--chunk-rows=0", "drivers.csv"), "--chunk-rows must be from 1 to 10000.");
    assertOneSentence(
        Program.run(folder, "here", "drivers.csv"),
        "here is no address of a service; give one like http://host:8080.");
    assertOneSentence(
        run("--set=power=3", "drivers.csv"), firstSentence(run("--set=power=3", "-")));
    assertOneSentence(
        run("--fail-on=ok", "drivers.csv"),
        "Invalid value for option '--fail-on': give note, warning or stop\nSee --help.");
  }

  private static String firstSentence(Program program) {
    assertTrue(program.err().startsWith("power is no field of driver-check; it has bl_tm, "));
    return program.err().strip();
  }

  @Test
  void aFaultOfTheHeaderIsOneMessage() throws Exception {
    assertOneSentence(
        check(HEADER.replace("re_ohm", "re_ohmm") + CLEAN, "drivers.csv"),
        "re_ohmm is not a known field. Did you mean re_ohm?");
    assertOneSentence(
        check("part_id,re_ohm,qts,qts\nA,3,1,1\n", "drivers.csv"),
        "qts is used more than once. rated_ohm is required.");
    assertOneSentence(
        check(HEADER.replace(',', ';') + CLEAN, "drivers.csv"),
        "The header holds semicolons; add --separator semicolon.");
    assertOneSentence(
        check(HEADER.replace(',', '\t') + CLEAN, "drivers.csv"),
        "The header holds tabs; add --separator tab.");
  }

  @Test
  void aQuoteThatIsNeverClosedIsNoCleanCatalogue() throws Exception {
    assertOneSentence(
        check(HEADER + CLEAN + "Q,4,3.4,38,7.09,0.56,\"0.52\n" + STOPPED, "drivers.csv"),
        "A quote opened in the row of line 3 is never closed.");
  }

  @Test
  void whatIsReadIsNotOverwrittenNorOneReportByAnother() throws Exception {
    String catalogue = HEADER + CLEAN;
    assertOneSentence(
        check(catalogue, "--write-baseline=./drivers.csv", "drivers.csv"),
        "the catalogue and --write-baseline are the same file, ./drivers.csv.");
    assertEquals(catalogue, Files.readString(folder.resolve("drivers.csv")));
    assertOneSentence(
        run("--junit=same", "--sarif=same", "drivers.csv"),
        "--junit and --sarif are the same file, same.");
  }

  @Test
  void numbersAreReadAsTheServiceReadsThemInCsv() throws Exception {
    Program program = check("part_id,rated_ohm,qts,qes,qms\nA,04,.41,.45,5.\n", "drivers.csv");
    assertEquals(0, program.code());
    assertTrue(program.out().startsWith("drivers.csv: 1 row: 0 stop, 0 warning, 1 note, 0 ok\n"));
  }

  @Test
  void aFieldGivenTwiceIsRefused() throws Exception {
    assertOneSentence(
        check(HEADER + CLEAN, "--column=qts=Q", "--column=qts=Qt", "drivers.csv"),
        "--column is given twice for qts.");
  }

  @Test
  void aFaultyRowIsAStopAtItsLineOfTheFileNotOfItsChunk() throws Exception {
    String catalogue =
        HEADER
            + CLEAN.repeat(5)
            + "\n"
            + "\"D\nd\",4,,,,,\n"
            + "F,\"4,5\",,,,,\n"
            + "G,4\n"
            + CLEAN;
    Program program = check(catalogue, "--chunk-rows=2", "--sarif=s.sarif", "drivers.csv");
    assertEquals(1, program.code(), program.err());
    assertTrue(program.out().contains("2 stop (2 of them refused)"), program.out());
    assertTrue(
        program
            .out()
            .contains(
                """
                  F, line 10
                    stop: rated_ohm must be a number from 0.5 to 600 with a decimal point, not a comma.
                  G, line 11
                    stop: The row has 2 cells, the header 7.
                """),
        program.out());
    assertEquals(8, Sarif.read(folder.resolve("s.sarif")).lines().get("D d"));
    assertEquals(12, Sarif.read(folder.resolve("s.sarif")).lines().get("C"));
  }

  @Test
  void onlyWhatIsNewIsReportedWhenLinesHaveMoved() throws Exception {
    assertEquals(
        1, check(HEADER + WARNED + STOPPED, "--write-baseline=known", "drivers.csv").code());
    String moved = HEADER + CLEAN + STOPPED + WARNED;
    assertEquals(0, check(moved, "--baseline=known", "--markdown=m", "drivers.csv").code());
    int entries = Files.readAllLines(folder.resolve("known")).size() - 1;
    String markdown = Files.readString(folder.resolve("m"));
    assertTrue(
        markdown.contains(
            "\nOnly what is new: "
                + entries
                + " findings of the baseline left out, 0 not found again.\n"),
        markdown);
    Program news =
        check(moved + STOPPED.replace('S', 'T'), "--baseline=known", "--sarif=s", "drivers.csv");
    assertEquals(1, news.code());
    assertEquals(List.of("C", "T"), List.copyOf(Sarif.read(folder.resolve("s")).lines().keySet()));
    assertOneSentence(
        run("--baseline=m", "drivers.csv"), "m is no baseline; --write-baseline writes one.");
  }

  @Test
  void linesOfJsonAndOtherNamesAndSeparatorsGiveTheSameFindings() throws Exception {
    Program csv = check(HEADER + CLEAN + STOPPED, "drivers.csv");
    Files.writeString(
        folder.resolve("drivers.ndjson"),
        """

        {"part_id":"C","rated_ohm":4,"re_ohm":3.4,"fs_hz":38,"qms":7.09,"qes":0.56,"qts":0.52}
        {"part_id":"S","rated_ohm":4,"re_ohm":3.4,"fs_hz":38,"qms":7.09,"qes":0.56,"qts":2.2}
        """);
    Program lines = run("drivers.ndjson");
    assertEquals(csv.out(), lines.out().replace("drivers.ndjson", "drivers.csv"));
    String theirs = HEADER.replace("part_id", "SKU").replace("qts", "Q total").replace(',', '\t');
    Program renamed =
        check(
            theirs + (CLEAN + STOPPED).replace(',', '\t'),
            "--separator=tab",
            "--id-column=SKU",
            "--column=qts=Q total",
            "drivers.csv");
    assertEquals(csv.out(), renamed.out());
  }

  @Test
  void aToleranceMayBeSetForAllRows() throws Exception {
    assertEquals(1, check(HEADER + WARNED, "drivers.csv").code());
    assertEquals(0, run("--set=tolerance.qts_percent=15", "drivers.csv").code());
  }

  @Test
  void aReaderThatGoesAwayIsNoReasonForAStackTrace() throws Exception {
    Files.writeString(folder.resolve("drivers.csv"), HEADER + STOPPED.repeat(900));
    Program program = inShell("\"$0\" \"$@\" --worst 900 drivers.csv | head -n 1");
    assertEquals("drivers.csv: 900 rows: 900 stop, 0 warning, 0 note, 0 ok\n", program.out());
    assertEquals("", program.err());
  }

  /** {@code script} makes a terminal. */
  @Test
  void aTerminalSeesABarAndNothingOfItStays() throws Exception {
    Files.writeString(folder.resolve("drivers.csv"), HEADER + CLEAN.repeat(3000));
    String onTerminal = "script -qec \"$0 $* drivers.csv\" /dev/null </dev/null";
    String seen = inShell(onTerminal).out();
    assertTrue(seen.contains("%  1,000 rows, "), seen);
    assertTrue(seen.contains("\r\u001b[Kdrivers.csv: 3000 rows:"), seen);
    String quiet = inShell(onTerminal.replace("$*", "$* --no-progress")).out();
    assertTrue(quiet.startsWith("drivers.csv: 3000 rows:"), quiet);
  }

  @Test
  void aPartNumberThatStandsForTwoRecordsFailsTheCheckAndIsInEveryReport() throws Exception {
    String other = CLEAN.replace("38", "39");
    assertEquals(0, check(HEADER + CLEAN + CLEAN, "drivers.csv").code());
    Program program = check(HEADER + CLEAN + other, "--junit=j", "--sarif=s", "drivers.csv");
    assertEquals(1, program.code(), program.err());
    assertTrue(
        program
            .out()
            .contains(
                """
                  C, line 3
                    warning: An earlier row has the same part number and other figures.
                """),
        program.out());
    assertTrue(program.out().contains(" warning  part-contradicted  "), program.out());
    assertTrue(JunitXml.read(folder.resolve("j")).names().contains("C: part-contradicted part_id"));
    assertEquals(
        Set.of("part-contradicted"), Sarif.read(folder.resolve("s")).codes("warning").get("C"));
    assertEquals(0, run("--fail-on=stop", "drivers.csv").code());
    run("--write-baseline=known", "drivers.csv");
    assertEquals(0, run("--baseline=known", "drivers.csv").code());
  }

  @Test
  void decimalCommasAreReadWhereTheyAreAnnouncedAndHintedAtOtherwise() throws Exception {
    String commas = (HEADER + WARNED).replace(',', ';').replace('.', ',') + ";;;;;;\n";
    Program read = check(commas, "--separator=semicolon", "--decimal=comma", "drivers.csv");
    Program points = check(HEADER + WARNED, "drivers.csv");
    assertEquals(points.out(), read.out());
    Program hinted = check(commas, "--separator=semicolon", "drivers.csv");
    assertEquals(1, hinted.code());
    assertTrue(
        hinted
            .out()
            .contains(
                "\n1 row with figures such as 0,47: if the catalogue is written with a decimal"
                    + " comma, add --decimal comma.\n"),
        hinted.out());
  }

  private Program inShell(String script) throws IOException, InterruptedException {
    return Program.run(
        folder,
        List.of(
            "sh",
            "-c",
            script,
            Program.JAVA,
            "-XX:TieredStopAtLevel=1",
            "-jar",
            Program.JAR.toString(),
            "--service",
            service.address().toString()));
  }
}
