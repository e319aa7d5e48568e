package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs the documentation: every {@code sh} block that a {@code text} block follows is run against
 * the built jar, and must print exactly that text.
 */
@Tag("long")
class DocumentationIT {

  private static final Pattern EXAMPLE =
      Pattern.compile(
          "```sh\\n(?<command>[^`]*)```\\n+```text\\n(?<output>.*?)```", Pattern.DOTALL);
  private static final String START = "mvn -q -pl service package -DskipTests && service/start";
  private static final String TEST = ".ci/setup && mvn verify -P everything";

  private static RunningJar service;

  @BeforeAll
  static void start() throws IOException, InterruptedException {
    service = new RunningJar();
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  @Test
  void theReadmeNamesTheTwoCommandsThatWork() throws IOException {
    String readme = read(Path.of("README.md"));
    assertTrue(readme.contains("```sh\n" + START + "\n```"), "the command this test starts");
    assertTrue(readme.contains("```sh\n" + TEST + "\n```"), "the command .ci/run runs");
    assertTrue(read(Path.of(".ci/run")).contains(TEST));
  }

  @Test
  void everyLinkBetweenPagesLeadsSomewhere() throws IOException {
    List<String> dead = new ArrayList<>();
    for (Path page : pages()) {
      Matcher link = Pattern.compile("\\]\\(([^)#:]+)(#[^)]*)?\\)").matcher(read(page));
      while (link.find()) {
        Path target = Committed.PROJECT.resolve(page).resolveSibling(link.group(1));
        if (!Files.exists(target)) {
          dead.add(page + " → " + link.group(1));
        }
      }
    }
    assertEquals(List.of(), dead);
  }

  /** With {@code -Dfootwell.write=true} the pages are rewritten with what the examples print. */
  @TestFactory
  Stream<DynamicTest> everyExamplePrintsWhatTheDocumentationShows()
      throws IOException, InterruptedException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path page : pages()) {
      String text = read(page);
      String printed = text;
      Matcher example = EXAMPLE.matcher(text);
      while (example.find()) {
        String shown = example.group("output");
        String output = run(example.group("command"));
        printed =
            printed.replace(
                example.group(), example.group().replace(shown + "```", output + "```"));
        tests.add(
            dynamicTest(
                page + ": " + example.group("command").lines().findFirst().orElse(""),
                () -> assertEquals(output, Boolean.getBoolean("footwell.write") ? output : shown)));
      }
      if (Boolean.getBoolean("footwell.write") && !printed.equals(text)) {
        Files.writeString(Committed.PROJECT.resolve(page), printed);
      }
    }
    assertFalse(tests.isEmpty());
    return tests.stream();
  }

  private static List<Path> pages() throws IOException {
    try (Stream<Path> docs = Files.walk(Committed.PROJECT.resolve("docs"))) {
      return Stream.concat(
              Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")),
              docs.filter(file -> file.toString().endsWith(".md"))
                  .map(Committed.PROJECT::relativize)
                  .sorted())
          .toList();
    }
  }

  private static String read(Path page) throws IOException {
    return Files.readString(Committed.PROJECT.resolve(page));
  }

  private static String run(String command) throws IOException, InterruptedException {
    String here = command.replace("localhost:8080", "localhost:" + service.port());
    Process process =
        new ProcessBuilder("bash", "-euo", "pipefail", "-c", here)
            .directory(Committed.PROJECT.toFile())
            .redirectErrorStream(true)
            .start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    return output.isEmpty() || output.endsWith("\n") ? output : output + "\n";
  }
}
