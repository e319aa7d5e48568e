package org.footwell;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The program as it was compiled, in a process of its own, and what it prints. */
public final class MainProcess implements AutoCloseable {

  private static final int WITHIN_S = 60;
  private static final Pattern PORT = Pattern.compile("listening on port (\\d+)");

  private final Path printed;
  private final Process process;

  public MainProcess(Map<String, String> settings, String... arguments) throws IOException {
    printed = Files.createTempFile("footwell", ".log");
    ProcessBuilder builder =
        new ProcessBuilder(
            Stream.concat(
                    Stream.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.footwell.Main"),
                    Stream.of(arguments))
                .toList());
    builder.environment().keySet().removeIf(name -> name.startsWith("FOOTWELL_"));
    builder.environment().putAll(settings);
    process = builder.redirectErrorStream(true).redirectOutput(printed.toFile()).start();
  }

  /** The port it listens on, once it does. */
  public int port() throws IOException, InterruptedException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(WITHIN_S);
    while (System.nanoTime() < end && process.isAlive()) {
      Matcher said = PORT.matcher(printed());
      if (said.find()) {
        return Integer.parseInt(said.group(1));
      }
      Thread.sleep(20);
    }
    throw new IllegalStateException("it does not listen: " + printed());
  }

  public void terminate() {
    process.destroy();
  }

  /** The status it ends with. */
  public int status() throws InterruptedException {
    if (!process.waitFor(WITHIN_S, TimeUnit.SECONDS)) {
      throw new IllegalStateException("it does not end");
    }
    return process.exitValue();
  }

  public String printed() throws IOException {
    return Files.readString(printed, StandardCharsets.UTF_8);
  }

  /** Lines of what it printed, without the remarks of test libraries on the class path. */
  public List<String> lines() throws IOException {
    return printed().lines().filter(line -> !line.startsWith("SLF4J")).toList();
  }

  @Override
  public void close() throws IOException {
    process.destroyForcibly();
    Files.delete(printed);
  }
}
