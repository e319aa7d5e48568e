package org.footwell.web;

import java.io.IOException;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;

/** Asks whether the service is ready, as a load balancer does, until nobody answers any more. */
final class ReadinessWatch {

  private static final int EVERY_MS = 20;

  private final HttpRequest question;
  private final CompletableFuture<Long> closedPortNs = new CompletableFuture<>();
  private volatile long notReadyNs;

  ReadinessWatch(URI service) {
    question =
        HttpRequest.newBuilder(service.resolve("/health/ready"))
            .timeout(Duration.ofSeconds(10))
            .build();
    Thread thread = new Thread(this::watch, "readiness");
    thread.setDaemon(true);
    thread.start();
  }

  private void watch() {
    HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    try {
      while (true) {
        int status = client.send(question, HttpResponse.BodyHandlers.discarding()).statusCode();
        if (status != 200 && notReadyNs == 0) {
          notReadyNs = System.nanoTime();
        }
        Thread.sleep(EVERY_MS);
      }
    } catch (ConnectException closed) {
      closedPortNs.complete(System.nanoTime());
    } catch (IOException | InterruptedException brokenOff) {
      closedPortNs.completeExceptionally(brokenOff);
    }
  }

  boolean isReady() {
    return notReadyNs == 0;
  }

  /** Waits until the port is closed; answers how long before that the service was not ready. */
  Duration noticeBeforeThePortClosed() {
    long closed = closedPortNs.join();
    return isReady() ? Duration.ZERO : Duration.ofNanos(closed - notReadyNs);
  }
}
