package org.footwell.web.pages;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.footwell.web.request.Rendering;

/**
 * The metrics at a port of their own, so that a network can admit whoever scrapes them there and
 * nobody else. On threads of its own: a service that has none left still says so.
 */
public final class MetricsPort implements AutoCloseable {

  private static final Set<String> METHODS = Set.of("GET", "HEAD");
  private static final int THREADS = 2;
  private static final long NO_BODY = -1;

  private final String host;
  private final int port;
  private final Metrics metrics;
  private final ExecutorService threads = Executors.newFixedThreadPool(THREADS);
  private HttpServer server;

  public MetricsPort(String host, int port, Metrics metrics) {
    this.host = host;
    this.port = port;
    this.metrics = metrics;
  }

  /**
   * Begins to listen.
   *
   * @throws IllegalArgumentException if the port cannot be had
   */
  public void open() {
    try {
      server = HttpServer.create(new InetSocketAddress(host, port), 0);
    } catch (IOException taken) {
      throw new IllegalArgumentException(
          "FOOTWELL_METRICS_PORT must be a port that is free and may be used: "
              + taken.getMessage(),
          taken);
    }
    server.setExecutor(threads);
    server.createContext("/", this::answer);
    server.start();
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      if (!exchange.getRequestURI().getPath().equals(Metrics.PATH)) {
        exchange.sendResponseHeaders(404, NO_BODY);
      } else if (!METHODS.contains(exchange.getRequestMethod())) {
        exchange.getResponseHeaders().set("Allow", "GET, HEAD");
        exchange.sendResponseHeaders(405, NO_BODY);
      } else {
        send(exchange, Rendering.utf8(metrics.text()));
      }
    }
  }

  private static void send(HttpExchange exchange, byte[] text) throws IOException {
    exchange.getResponseHeaders().set("Content-Type", Metrics.CONTENT_TYPE);
    exchange.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
    if (exchange.getRequestMethod().equals("HEAD")) {
      exchange.sendResponseHeaders(200, NO_BODY);
    } else {
      exchange.sendResponseHeaders(200, text.length);
      exchange.getResponseBody().write(text);
    }
  }

  @Override
  public void close() {
    if (server != null) {
      server.stop(0);
    }
    threads.shutdown();
  }
}
