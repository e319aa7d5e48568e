package org.footwell.web;

import java.io.IOException;
import java.net.ConnectException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.concurrent.CompletableFuture;

/**
 * Sends one request after the other over a connection of its own and sends none again. It stops when
 * the service is not ready, or cannot be reached before anything was sent.
 */
final class KeptAliveCaller {

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final HttpRequest request;
  private final ReadinessWatch watch;
  private final CompletableFuture<Void> begun = new CompletableFuture<>();
  private final CompletableFuture<Integer> answered = new CompletableFuture<>();

  KeptAliveCaller(HttpRequest request, ReadinessWatch watch) {
    this.request = request;
    this.watch = watch;
    Thread thread = new Thread(this::call, "caller");
    thread.setDaemon(true);
    thread.start();
  }

  private void call() {
    int count = 0;
    try {
      while (watch.isReady()) {
        HttpResponse<String> response = client.send(request, HttpResponse.BodyHandlers.ofString());
        if (response.statusCode() != 200 || !response.body().endsWith("}")) {
          throw new IOException(response.statusCode() + " " + response.body());
        }
        count++;
        begun.complete(null);
      }
      answered.complete(count);
    } catch (ConnectException closedBeforeAnythingWasSent) {
      answered.complete(count);
    } catch (IOException | InterruptedException lost) {
      answered.completeExceptionally(lost);
    }
  }

  /** Waits until it is busy. */
  void awaitFirstAnswer() {
    CompletableFuture.anyOf(begun, answered).join();
  }

  /** How many requests it sent, each of which was answered; fails where one was lost. */
  int answered() {
    return answered.join();
  }
}
