package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.footwell.recording.WavBytes;
import org.footwell.recording.WavBytes.Kind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Callers that send or read too slowly, fifty at once, against the others; over real sockets. */
@Tag("long")
class SlowCallersIT {

  private static final int COUNT = 50;
  private static final int ROWS = 4000;
  private static final Duration SOON = Duration.ofSeconds(5);

  /** As large a body as one is held back by: more than what the connection itself takes up. */
  private static final int STATED = 2_000_000;

  private Server server;
  private final List<Socket> slow = new ArrayList<>();

  @BeforeEach
  void startWithLittlePatience() {
    server =
        RunningServer.start(
            Map.of("FOOTWELL_PATIENCE_MS", "1500", "FOOTWELL_LEAST_RATE", "1000000"));
  }

  @AfterEach
  void stop() throws IOException {
    for (Socket socket : slow) {
      socket.close();
    }
    server.close();
  }

  private Socket connect() throws IOException {
    Socket socket = new Socket();
    socket.setReceiveBufferSize(4096);
    socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), server.port()));
    socket.setSoTimeout(10_000);
    slow.add(socket);
    return socket;
  }

  private static void send(Socket socket, String text) throws IOException {
    socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
  }

  /** All that still comes, until the service closes the connection. */
  private static String rest(Socket socket) throws IOException {
    try {
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    } catch (SocketException closed) {
      return "";
    }
  }

  /** A question and a recording of more than 1 MiB, as anybody sends them. */
  private void assertOthersAreAnswered() throws Exception {
    URI service = URI.create("http://127.0.0.1:" + server.port());
    float[] pulse = new float[600_000];
    for (int n = 100; n < pulse.length; n++) {
      pulse[n] = (float) (0.7 * Math.exp(-0.5 * (n - 100)) * Math.cos(0.8 * (n - 100)));
    }
    String request =
        """
        {"kind": "impulse_response", "time_reference": "common_start",
         "channels": [{"id": "a"}], "microphones": [{"id": "m"}],
         "recordings": [{"channel": "a", "microphone": "m", "recording": {"wav": "x"}}]}
        """;
    UploadBody upload =
        new UploadBody(request, Map.of("x", WavBytes.of(Kind.INT16, 48_000, pulse)));
    assertTimeout(
        SOON,
        () -> {
          assertEquals(200, UploadBody.json(service, SoundLevelCalls.PATH, SoundLevelCalls.GOOD));
          assertEquals(200, upload.post(service, "/v1/arrival-times").statusCode());
        });
  }

  @Test
  void slowSendersOfRecordingsAreCutOffAndHoldUpNobody() throws Exception {
    assertSlowSendersHoldUpNobody("/v1/arrival-times", "multipart/form-data; boundary=x");
  }

  @Test
  void slowSendersOfQuestionsAreCutOffAndHoldUpNobody() throws Exception {
    assertSlowSendersHoldUpNobody(SoundLevelCalls.PATH + "/batch", "application/x-ndjson");
  }

  private void assertSlowSendersHoldUpNobody(String path, String type) throws Exception {
    for (int i = 0; i < COUNT; i++) {
      send(
          connect(),
          "POST %s HTTP/1.1\r\nHost: a\r\nConnection: close\r\nContent-Type: %s\r\nContent-Length: %d\r\n\r\n-"
              .formatted(path, type, STATED));
    }
    assertOthersAreAnswered();
    for (int round = 0; round < 20; round++) {
      Thread.sleep(100);
      for (Socket socket : slow) {
        trickle(socket);
      }
    }
    assertOthersAreAnswered();
    for (Socket socket : slow) {
      String answer = rest(socket);
      assertTrue(answer.isEmpty() || answer.startsWith("HTTP/1.1 400 "), answer);
      assertTrue(answer.isEmpty() || answer.contains("The body comes too slowly"), answer);
    }
  }

  private static void trickle(Socket socket) throws IOException {
    try {
      send(socket, "-");
    } catch (SocketException cutOff) {
      assertTrue(socket.isConnected());
    }
  }

  @Test
  void slowReadersAreCutOffAndHoldUpNobody() throws Exception {
    String rows = (SoundLevelCalls.GOOD.replaceAll("\\s*\n\\s*", "") + "\n").repeat(ROWS);
    for (int i = 0; i < COUNT; i++) {
      send(
          connect(),
          "POST %s/batch?workings=true HTTP/1.1\r\nHost: a\r\nConnection: close\r\nContent-Type: application/x-ndjson\r\nContent-Length: %d\r\n\r\n%s"
              .formatted(SoundLevelCalls.PATH, rows.length(), rows));
    }
    assertOthersAreAnswered();
    for (int round = 0; round < 40; round++) {
      Thread.sleep(100);
      for (Socket socket : slow) {
        socket.getInputStream().read();
      }
    }
    assertOthersAreAnswered();
    for (Socket socket : slow) {
      long lines = rest(socket).lines().count();
      assertTrue(lines < ROWS / 2, () -> lines + " rows were kept for a slow reader");
    }
  }
}
