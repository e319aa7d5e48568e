package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start script beside a copy of the built jar. */
@Tag("long")
class StartScriptIT {

  private static final int WITHIN_S = 300;

  /** Has another command run without the rights of root. */
  private static final List<String> AS_NOBODY =
      List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups");

  @TempDir private Path folder;
  private Path jar;

  @BeforeEach
  void copy() throws IOException {
    jar = folder.resolve("footwell.jar");
    Files.copy(Committed.PROJECT.resolve("service/target/footwell.jar"), jar);
    Files.copy(Committed.PROJECT.resolve("service/start"), folder.resolve("start"));
    assertTrue(folder.resolve("start").toFile().setExecutable(true, false));
  }

  @Test
  void theFirstStartHasJavaKeepTheClassesAndLaterOnesUseThem()
      throws IOException, InterruptedException {
    assertTrue(check().contains("rehearsing"));
    Path kept = onlyKept();
    String second = check("-Xlog:class+load");
    assertFalse(second.contains("rehearsing"), "the second start rehearses too");
    assertTrue(
        second.lines().anyMatch(line -> line.contains("org.footwell.Main source: shared objects")),
        second);
    // Built again with nothing new in it.
    Files.setLastModifiedTime(jar, FileTime.fromMillis(System.currentTimeMillis()));
    assertTrue(check("-Xlog:class+load").contains("org.footwell.Main source: shared objects"));
    assertEquals(kept, onlyKept());
  }

  @Test
  void anotherJarIsRehearsedAnewAndTwoStartsAtOnceDoNoHarm()
      throws IOException, InterruptedException {
    Files.writeString(folder.resolve(Path.of("footwell-1-2.classes")), "of another Java");
    List<Process> both = List.of(start(""), start(""));
    for (Process one : both) {
      assertTrue(ended(one).contains("The settings can be used."));
    }
    Path kept = onlyKeptBeside("footwell-1-2.classes");
    Process zip =
        new ProcessBuilder("jar", "uf", jar.toString(), "-C", folder.toString(), "start").start();
    assertEquals(0, zip.waitFor());
    assertTrue(check().contains("rehearsing"));
    assertFalse(kept.equals(onlyKeptBeside("footwell-1-2.classes")));
  }

  @Test
  void whereNothingCanBeKeptItStartsWithout() throws IOException, InterruptedException {
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
    try {
      String said = ended(start("", mayWriteEverywhere() ? AS_NOBODY : List.of()));
      assertEquals("The settings can be used.\n", said);
    } finally {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  /** As root may. */
  private boolean mayWriteEverywhere() {
    return Files.isWritable(folder);
  }

  /** Told to share no classes, Java cannot keep any. */
  @Test
  void aJavaThatCannotKeepThemIsAskedOnce() throws IOException, InterruptedException {
    assertTrue(check("-Xshare:off").contains("rehearsing"));
    assertEquals(0, Files.size(kept().get(0)));
    assertEquals("The settings can be used.\n", check("-Xshare:off"));
  }

  private Path onlyKept() throws IOException {
    List<Path> kept = kept();
    assertEquals(1, kept.size(), kept.toString());
    assertTrue(Files.size(kept.get(0)) > 1_000_000);
    return kept.get(0);
  }

  private Path onlyKeptBeside(String other) throws IOException {
    List<Path> kept = new ArrayList<>(kept());
    assertTrue(kept.remove(folder.resolve(other)), "that of another Java is gone");
    assertEquals(1, kept.size(), kept.toString());
    return kept.get(0);
  }

  private List<Path> kept() throws IOException {
    Set<String> ours = Set.of("footwell.jar", "start");
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> !ours.contains(file.getFileName().toString())).toList();
    }
  }

  private String check(String... options) throws IOException, InterruptedException {
    return ended(start(String.join(" ", options)));
  }

  private Process start(String options) throws IOException {
    return start(options, List.of());
  }

  private Process start(String options, List<String> by) throws IOException {
    List<String> command = new ArrayList<>(by);
    command.addAll(List.of(folder.resolve("start").toString(), "--check"));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("JDK_JAVA_OPTIONS", options);
    return builder.redirectErrorStream(true).start();
  }

  private static String ended(Process start) throws IOException, InterruptedException {
    String said = new String(start.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(start.waitFor(WITHIN_S, TimeUnit.SECONDS));
    assertEquals(0, start.exitValue(), said);
    return said.lines()
        .filter(line -> !line.startsWith("NOTE: Picked up"))
        .map(line -> line + "\n")
        .reduce("", String::concat);
  }
}
