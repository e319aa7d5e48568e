package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Files that are derived by the build and committed as text. A test compares them and fails on
 * difference; with {@code -Dfootwell.write=true} it writes them instead.
 */
public final class Committed {

  /** The folder of the whole project, seen from the module that the tests run in. */
  public static final Path PROJECT = project(Path.of("").toAbsolutePath());

  private static Path project(Path from) {
    return Files.exists(from.resolve("DEVELOPERS.md")) ? from : project(from.getParent());
  }

  private Committed() {}

  public static void assertUpToDate(String file, String derived) throws IOException {
    Path path = PROJECT.resolve(file);
    if (Boolean.getBoolean("footwell.write")) {
      Files.createDirectories(path.getParent());
      Files.writeString(path, derived);
    }
    assertEquals(
        derived,
        Files.exists(path) ? Files.readString(path) : "",
        file + " is out of date; run: mvn -pl service test -Dfootwell.write=true");
  }
}
