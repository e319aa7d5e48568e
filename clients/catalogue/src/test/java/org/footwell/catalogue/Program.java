package org.footwell.catalogue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.footwell.Committed;

/** The built program, run as a person or a build server runs it. */
record Program(int code, String out, String err) {

  static final Path JAR =
      Committed.PROJECT.resolve("clients/catalogue/target/footwell-catalogue.jar");
  static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();

  private static final int SECONDS = 120;

  /** Runs it with a small heap against a service, in a folder. */
  static Program run(Path folder, String service, String... arguments)
      throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                JAVA,
                "-Xmx40m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-jar",
                JAR.toString(),
                "--service",
                service));
    command.addAll(List.of(arguments));
    return run(folder, command);
  }

  /** Runs a command in a folder. */
  static Program run(Path folder, List<String> command) throws IOException, InterruptedException {
    Path out = Files.createTempFile("out", null);
    Path err = Files.createTempFile("err", null);
    try {
      Process process =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
              .redirectOutput(out.toFile())
              .redirectError(err.toFile())
              .start();
      if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new IllegalStateException("still running: " + command + Files.readString(err));
      }
      return new Program(process.exitValue(), Files.readString(out), Files.readString(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }
}
