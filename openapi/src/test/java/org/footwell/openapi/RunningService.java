package org.footwell.openapi;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;

/** The built service, as a process of its own on a free port of this machine. */
final class RunningService implements AutoCloseable {

  private static final Duration PATIENCE = Duration.ofSeconds(30);

  private final Process process;
  private final Path log;
  private final URI address;

  private RunningService(Process process, Path log, URI address) {
    this.process = process;
    this.log = log;
    this.address = address;
  }

  /** Starts the jar and waits until it takes requests. */
  static RunningService start(Path jar) throws IOException, InterruptedException {
    Path log = Files.createDirectories(Path.of("target")).resolve("service.log");
    int port = freePort();
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:+UseSerialGC",
            "-Xmx128m",
            "-jar",
            jar.toString());
    builder.environment().put("FOOTWELL_HOST", "127.0.0.1");
    builder.environment().put("FOOTWELL_PORT", Integer.toString(port));
    builder.redirectErrorStream(true).redirectOutput(log.toFile());
    URI address = URI.create("http://127.0.0.1:" + port + "/");
    RunningService service = new RunningService(builder.start(), log, address);
    try {
      service.awaitReady();
      return service;
    } catch (IOException | InterruptedException | RuntimeException e) {
      service.close();
      throw e;
    }
  }

  URI address() {
    return address;
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private void awaitReady() throws IOException, InterruptedException {
    HttpClient client = HttpClient.newHttpClient();
    HttpRequest probe =
        HttpRequest.newBuilder(address.resolve("/health/ready"))
            .timeout(Duration.ofSeconds(2))
            .build();
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (process.isAlive() && System.nanoTime() < end) {
      try {
        if (client.send(probe, BodyHandlers.discarding()).statusCode() == 200) {
          return;
        }
      } catch (IOException notYet) {
        // it is still starting
      }
      Thread.sleep(100);
    }
    throw new IOException("the service did not get ready:\n" + Files.readString(log));
  }

  /** Stops it as an operator would, and by force when that takes too long. */
  @Override
  public void close() {
    process.destroy();
    try {
      if (process.waitFor(10, TimeUnit.SECONDS)) {
        return;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    process.destroyForcibly();
  }
}
