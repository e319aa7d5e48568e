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
import java.util.regex.Pattern;

/** Answers batches as it is told to: the next chunk by the next manner, afterwards properly. */
final class FakeService implements AutoCloseable {

  /** A row in order; {@code ROW} is what the row was called. */
  static final String ANSWER =
      "{\"result\":{\"part\":\"ROW\"},\"findings\":[],\"verdict\":\"ok\",\"safety\":[]}\n";

  private static final String LINES = "application/x-ndjson";
  private static final Pattern CALLED = Pattern.compile("\"part_id\":\"([0-9]+)\"");

  /** A chunk as it arrived. */
  record Asked(long atNanos, String body, String token) {
    long rows() {
      return body.lines().count();
    }

    /** The answers to its rows, each made from the same line. */
    List<String> answers(String line) {
      return CALLED
          .matcher(body)
          .results()
          .map(called -> line.replace("ROW", called.group(1)))
          .toList();
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
    return (exchange, asked) -> answer(exchange, 200, LINES, String.join("", asked.answers(line)));
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
      List<String> answers = asked.answers(ANSWER);
      exchange.getResponseHeaders().set("Content-Type", LINES);
      exchange.sendResponseHeaders(200, stated ? String.join("", answers).length() : 0);
      OutputStream out = exchange.getResponseBody();
      String begun = String.join("", answers.subList(0, rows)) + "{\"findings\":[{\"lev";
      out.write(begun.getBytes(StandardCharsets.UTF_8));
      out.flush();
      exchange.close();
    };
  }

  /** The answer ends as if it were whole, within a row. */
  static Manner endingAfter(int rows, String begun) {
    return (exchange, asked) ->
        answer(
            exchange, 200, LINES, String.join("", asked.answers(ANSWER).subList(0, rows)) + begun);
  }

  /** The answers to the first two rows have changed places. */
  static Manner exchanging(String first, String second) {
    return (exchange, asked) -> {
      List<String> answers = new ArrayList<>(asked.answers(ANSWER));
      answers.set(0, asked.answers(second).get(1));
      answers.set(1, asked.answers(first).get(0));
      answer(exchange, 200, LINES, String.join("", answers));
    };
  }

  /** Nothing for a while, before the answer or within it. */
  static Manner stalling(long millis, boolean within) {
    return (exchange, asked) -> {
      if (!within) {
        Thread.sleep(millis);
      }
      exchange.getResponseHeaders().set("Content-Type", LINES);
      exchange.sendResponseHeaders(200, 0);
      try (OutputStream out = exchange.getResponseBody()) {
        for (String answer : asked.answers(ANSWER)) {
          out.write(answer.getBytes(StandardCharsets.UTF_8));
          out.flush();
          if (within && answer.equals(asked.answers(ANSWER).get(0))) {
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
