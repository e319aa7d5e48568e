package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.footwell.web.Settings;
import org.junit.jupiter.api.Test;

class CommandLineTest {

  private static final Map<String, String> NOTHING_SET = Map.of();

  @Test
  void helpNamesEveryOptionAndEverySetting() throws IOException, InterruptedException {
    try (MainProcess help = new MainProcess(NOTHING_SET, "--help")) {
      assertEquals(0, help.status());
      assertTrue(help.printed().endsWith(Settings.help()), help.printed());
      for (String option : List.of("--help ", "--check ", "--rehearse ")) {
        assertTrue(help.printed().contains("\n  " + option), help.printed());
      }
    }
  }

  @Test
  void aCheckOfGoodSettingsStartsNothing() throws IOException, InterruptedException {
    try (MainProcess check = new MainProcess(Map.of("FOOTWELL_DEADLINE_MS", "5"), "--check")) {
      assertEquals(0, check.status());
      assertEquals(List.of("The settings can be used."), check.lines());
    }
  }

  @Test
  void aCheckOfBadSettingsNamesEveryFault() throws IOException, InterruptedException {
    Map<String, String> bad =
        Map.of(
            "FOOTWELL_LOG", "xml",
            "FOOTWELL_LOG_REQUESTS", "true",
            "FOOTWELL_PORT", "65536",
            "FOOTWELL_HOTS", "localhost");
    try (MainProcess check = new MainProcess(bad, "--check")) {
      assertEquals(2, check.status());
      assertEquals(
          List.of(
              "FOOTWELL_LOG must be one of plain, json, not xml",
              "FOOTWELL_LOG_REQUESTS must be one of no, yes, not true",
              "FOOTWELL_PORT must be a whole number from 0 to 65535, not 65536",
              "FOOTWELL_HOTS is no setting. Did you mean FOOTWELL_HOST?"),
          check.lines());
    }
  }

  @Test
  void anUnknownOptionIsToldWithThoseThereAre() throws IOException, InterruptedException {
    try (MainProcess wrong = new MainProcess(NOTHING_SET, "--chekc")) {
      assertEquals(2, wrong.status());
      assertEquals("--chekc is no option", wrong.lines().get(0));
      assertTrue(wrong.printed().contains("usage: "), wrong.printed());
    }
  }

  @Test
  void thePageOnRunningItSaysOfEverySettingWhatHelpSays() throws IOException {
    try (Stream<String> lines = Files.lines(Committed.PROJECT.resolve("docs/operating.md"))) {
      assertEquals(
          Settings.table(), lines.filter(line -> line.startsWith("| `FOOTWELL_")).toList());
    }
  }
}
