package org.footwell.catalogue;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Answers batches as it is told to: the next chunk by the next manner, afterwards properly. */
final class FakeService implements AutoCloseable {

  static final String ANSWER = "{\"findings\":[],\"verdict\":\"ok\",\"safety\":[]}\n";

  /** A chunk as it arrived. */
  record Asked(long atNanos, String body, String token) {
    long rows() {
      return body.lines().count();
    }
  }

  /** How one chunk is answered. */
  interface Manner {
    void answer(HttpExchange exchange, Asked asked) throws IOException, InterruptedException;
  }

  private final HttpServer server =
      HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final Queue<Manner> manners = new ArrayDeque<>();
  final List<Asked> asked = Collections.synchronizedList(new ArrayList<>());

  FakeService(Manner... first) throws IOException {
    manners.addAll(List.of(first));
    server.setExecutor(threads);
    server.createContext("/v1/driver-check/batch", this::handle);
    server.start();
  }

  String address() {
    return "http://localhost:" + server.getAddress().getPort();
  }

  /** Goes away without an answer to the next chunk. */
  void leaveNext() {
    manners.add((exchange, asked) -> close());
  }

  private void handle(HttpExchange exchange) throws IOException {
    String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
    String type = exchange.getRequestHeaders().getFirst("Content-Type");
    if (type.equals("text/csv")) {
      answer(exchange, 200, type, body);
      return;
    }
    Asked now = new Asked(System.nanoTime(), body, exchange.getRequestHeaders().getFirst("Token"));
    asked.add(now);
    try {
      next().answer(exchange, now);
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
    }
  }

  private synchronized Manner next() {
    return manners.isEmpty() ? properly() : manners.remove();
  }

  static void answer(HttpExchange exchange, int status, String type, String body)
      throws IOException {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    exchange.getResponseHeaders().set("Content-Type", type);
    exchange.sendResponseHeaders(status, bytes.length);
    try (OutputStream out = exchange.getResponseBody()) {
      out.write(bytes);
    }
  }

  /** Every row is in order. */
  static Manner properly() {
    return rowsAre(ANSWER);
  }

  /** The same for every row. */
  static Manner rowsAre(String line) {
    return (exchange, asked) ->
        answer(exchange, 200, "application/x-ndjson", line.repeat((int) asked.rows()));
  }

  /** Turned away, with a Retry-After unless it is null. */
  static Manner busy(int status, String retryAfter) {
    return (exchange, asked) -> {
      if (retryAfter != null) {
        exchange.getResponseHeaders().set("Retry-After", retryAfter);
      }
      answer(
          exchange,
          status,
          "application/problem+json",
          "{\"type\":\"/problems/busy\",\"title\":\"Busy\",\"status\":"
              + status
              + ",\"detail\":\"The service is busy.\"}");
    };
  }

  /** The connection is cut after some rows; chunked or with a stated length. */
  static Manner cutAfter(int rows, boolean stated) {
    return (exchange, asked) -> {
      exchange.getResponseHeaders().set("Content-Type", "application/x-ndjson");
      exchange.sendResponseHeaders(200, stated ? ANSWER.length() * asked.rows() : 0);
      OutputStream out = exchange.getResponseBody();
      out.write((ANSWER.repeat(rows) + "{\"findings\":[{\"lev").getBytes(StandardCharsets.UTF_8));
      out.flush();
      exchange.close();
    };
  }

  /** The answer ends as if it were whole, within a row. */
  static Manner endingAfter(int rows, String begun) {
    return (exchange, asked) ->
        answer(exchange, 200, "application/x-ndjson", ANSWER.repeat(rows) + begun);
  }

  /** Nothing for a while, before the answer or within it. */
  static Manner stalling(long millis, boolean within) {
    return (exchange, asked) -> {
      if (!within) {
        Thread.sleep(millis);
      }
      exchange.getResponseHeaders().set("Content-Type", "application/x-ndjson");
      exchange.sendResponseHeaders(200, 0);
      try (OutputStream out = exchange.getResponseBody()) {
        for (int i = 0; i < asked.rows(); i++) {
          out.write(ANSWER.getBytes(StandardCharsets.UTF_8));
          out.flush();
          if (within && i == 0) {
            Thread.sleep(millis);
          }
        }
      }
    };
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }
}
