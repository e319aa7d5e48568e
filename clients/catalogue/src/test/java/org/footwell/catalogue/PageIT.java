package org.footwell.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.footwell.Committed;
import org.footwell.RunningJar;
import org.junit.jupiter.api.Test;

/**
 * Runs the page about the program: every {@code bash} block that a {@code text} block follows must
 * print exactly that text. The {@code sh} blocks need the service only and are run by its tests.
 */
class PageIT {

  private static final Pattern EXAMPLE =
      Pattern.compile(
          "```bash\\n(?<command>[^`]*)```\\n+```text\\n(?<output>.*?)```", Pattern.DOTALL);
  private static final Path PAGE = Committed.PROJECT.resolve("docs/catalogue-check.md");

  /** With {@code -Dfootwell.write=true} the page is rewritten with what the examples print. */
  @Test
  void everyExamplePrintsWhatThePageShows() throws IOException, InterruptedException {
    String text = Files.readString(PAGE);
    String printed = text;
    int examples = 0;
    try (RunningJar service = new RunningJar()) {
      for (Matcher example = EXAMPLE.matcher(text); example.find(); examples++) {
        String shown = example.group("output");
        String output = run(example.group("command"), service.address().toString());
        printed =
            printed.replace(
                example.group(), example.group().replace(shown + "```", output + "```"));
      }
    }
    assertEquals(2, examples);
    if (Boolean.getBoolean("footwell.write")) {
      Files.writeString(PAGE, printed);
    } else {
      assertEquals(text, printed);
    }
  }

  private static String run(String command, String service)
      throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder("bash", "-uo", "pipefail", "-c", command)
            .directory(Committed.PROJECT.toFile())
            .redirectErrorStream(true);
    builder.environment().put("FOOTWELL_URL", service);
    Process process = builder.start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    return output;
  }
}
