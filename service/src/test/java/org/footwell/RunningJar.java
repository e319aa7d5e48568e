package org.footwell;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The built jar, running on a free port. */
public final class RunningJar implements AutoCloseable {

  private static final int READY_WITHIN_S = 60;

  /** Nobody has to be told first that it stops. */
  private static final Map<String, String> STOPS_AT_ONCE = Map.of("FOOTWELL_STOP_DELAY_MS", "0");

  private final Process process;
  private final int port;

  public RunningJar() throws IOException, InterruptedException {
    this("-Xmx128m");
  }

  /** With options of the Java machine, heap included. */
  public RunningJar(String... options) throws IOException, InterruptedException {
    this(STOPS_AT_ONCE, ProcessBuilder.Redirect.DISCARD, options);
  }

  /** With settings of its own, and what it prints where it can be read. */
  public RunningJar(
      Map<String, String> settings, ProcessBuilder.Redirect printed, String... options)
      throws IOException, InterruptedException {
    try (ServerSocket socket = new ServerSocket(0)) {
      port = socket.getLocalPort();
    }
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    List<String> command = new ArrayList<>(List.of(java.toString()));
    command.addAll(List.of(options));
    command.addAll(List.of("-jar", "service/target/footwell.jar"));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.directory(Committed.PROJECT.toFile());
    builder.environment().put("FOOTWELL_PORT", Integer.toString(port));
    builder.environment().putAll(settings);
    process = builder.redirectErrorStream(true).redirectOutput(printed).start();
    awaitReady();
  }

  /** Tells the service to stop, as whoever runs it does. */
  public void terminate() {
    process.destroy();
  }

  /**
   * The status with which the process ended.
   *
   * @throws IllegalStateException if it did not end in time
   */
  public int endedWithin(Duration time) throws InterruptedException {
    if (!process.waitFor(time.toMillis(), TimeUnit.MILLISECONDS)) {
      throw new IllegalStateException("the service still runs after " + time);
    }
    return process.exitValue();
  }

  public long pid() {
    return process.pid();
  }

  public int port() {
    return port;
  }

  public URI address() {
    return URI.create("http://localhost:" + port);
  }

  private void awaitReady() throws InterruptedException {
    HttpClient client = HttpClient.newHttpClient();
    HttpRequest ready =
        HttpRequest.newBuilder(URI.create("http://localhost:" + port + "/health/ready")).build();
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(READY_WITHIN_S);
    while (System.nanoTime() < end && process.isAlive()) {
      try {
        if (client.send(ready, HttpResponse.BodyHandlers.ofString()).statusCode() == 200) {
          return;
        }
      } catch (IOException notYet) {
        // not listening so far
      }
      Thread.sleep(50);
    }
    close();
    throw new IllegalStateException("the jar was not ready within " + READY_WITHIN_S + " s");
  }

  @Override
  public void close() {
    process.destroy();
    try {
      if (!process.waitFor(10, TimeUnit.SECONDS)) {
        process.destroyForcibly();
      }
    } catch (InterruptedException interrupted) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
    }
  }
}
