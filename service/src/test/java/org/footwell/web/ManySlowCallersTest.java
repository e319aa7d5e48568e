package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** More callers that keep the service waiting than it has threads. */
class ManySlowCallersTest {

  private static final int SLOW = 300;
  private static final int WAITED_FOR = 100;
  private static final Duration SOON = Duration.ofSeconds(5);

  private final Server server = RunningServer.start(Map.of());
  private final List<Socket> slow = new ArrayList<>();

  @AfterEach
  void stop() throws IOException {
    for (Socket socket : slow) {
      socket.close();
    }
    server.close();
  }

  private void begin(String request) throws IOException {
    Socket socket = new Socket();
    socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), server.port()));
    socket.setSoTimeout((int) SOON.toMillis());
    slow.add(socket);
    socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
  }

  private void assertOthersAreAnswered() {
    assertTimeout(
        SOON,
        () -> {
          assertEquals(200, given(server.port()).get("/health/ready").statusCode());
          assertEquals(200, given(server.port()).get(PATH + "?" + QUERY).statusCode());
        });
  }

  @Test
  void sendersThatPauseTakeAPartOfTheThreadsOnly() throws IOException {
    for (int i = 0; i < SLOW; i++) {
      begin(
          "POST %s HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 9\r\n\r\n"
              .formatted(PATH));
    }
    assertOthersAreAnswered();
    // Refused are those that cannot be waited for; the others are waited for until they are silent
    // for too long.
    int refused = 0;
    for (Socket socket : slow) {
      if (socket.getInputStream().available() > 0) {
        String begin =
            new String(socket.getInputStream().readNBytes(12), StandardCharsets.US_ASCII);
        refused += begin.equals("HTTP/1.1 503") ? 1 : 0;
      }
    }
    assertEquals(SLOW - WAITED_FOR, refused);
  }

  /** A body that is all there needs no waiting, and one that is not is told to come again. */
  @Test
  void whoKeepsNobodyWaitingIsAnsweredBesideThem() throws IOException {
    for (int i = 0; i < WAITED_FOR; i++) {
      begin(
          "POST %s HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 9\r\n\r\n"
              .formatted(PATH));
    }
    assertOthersAreAnswered();
    String whole =
        "POST %s HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: %d\r\nConnection: close\r\n\r\n%s"
            .formatted(PATH, GOOD.length(), GOOD);
    try (RawConnection connection = new RawConnection(server.port())) {
      connection.send(whole);
      assertTrue(connection.readAll().startsWith("HTTP/1.1 200 "));
    }
    try (RawConnection connection = new RawConnection(server.port())) {
      connection.send(whole.substring(0, whole.length() - 5));
      String answer = connection.readAll();
      assertTrue(answer.startsWith("HTTP/1.1 503 "), answer);
      assertTrue(answer.contains("Retry-After: 1\r\n"), answer);
      assertTrue(
          answer.contains("Too many callers are waited for; try again in a moment."), answer);
    }
  }
}
