package org.footwell.web.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.UnixOperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.footwell.RunningJar;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Connections that only are there, and such as begin and do not go on, against the others. Slow senders and
 * readers are in {@code SlowCallersIT}.
 */
@Tag("long")
class ManyConnectionsIT {

  private static final int IDLE = 4_000;
  private static final int HALF_OPEN = 300;
  private static final long FILES = IDLE + HALF_OPEN + 500L;
  private static final Duration SOON = Duration.ofSeconds(5);

  /** What a connection may hold between its requests. */
  private static final long OF_EACH_BYTES = 12L << 10;

  private static final long MEMORY_BYTES = 8L << 20;

  private static final Shot QUESTION =
      new Shot("", "GET", "/v1/wiring-load?network=4%7C%7C4&field=load_ohm", Map.of(), null);

  private final List<Socket> connections = new ArrayList<>();

  private void connect(int port, String begin) throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
    connections.add(socket);
    socket.getOutputStream().write(begin.getBytes(StandardCharsets.US_ASCII));
  }

  private static void assertOthersAreAnswered(RunningJar service) throws IOException {
    for (int i = 0; i < 20; i++) {
      Attacker other = new Attacker(service.port(), SOON);
      long start = System.nanoTime();
      assertEquals("2.0", other.send(QUESTION).body());
      assertTrue(Duration.ofNanos(System.nanoTime() - start).compareTo(SOON) < 0);
      other.hangUp();
    }
  }

  /** Asks on an open connection with a header that no other sends, and reads the answer. */
  private static void ask(Socket socket, int mark) throws IOException {
    String question =
        "GET %s HTTP/1.1\r\nHost: a\r\nX-Mark: %d\r\n\r\n".formatted(QUESTION.address(), mark);
    socket.getOutputStream().write(question.getBytes(StandardCharsets.US_ASCII));
    StringBuilder answer = new StringBuilder();
    while (answer.indexOf("\r\n\r\n2.0") < 0) {
      int next = socket.getInputStream().read();
      assertTrue(next >= 0, () -> "ended after " + answer);
      answer.append((char) next);
    }
  }

  @Test
  void thousandsOfConnectionsThatAskHoldLittle() throws Exception {
    try (RunningJar service = new RunningJar("-Xmx128m", "-XX:+UseSerialGC")) {
      assertOthersAreAnswered(service);
      long before = LiveMemory.of(service);
      for (int i = 0; i < IDLE; i++) {
        connect(service.port(), "");
      }
      for (int round = 0; round < 2; round++) {
        for (int i = 0; i < IDLE; i++) {
          ask(connections.get(i), i);
        }
      }
      long ofEach = (LiveMemory.of(service) - before) / IDLE;
      assertTrue(ofEach < OF_EACH_BYTES, ofEach + " bytes are held for each");
      for (Socket socket : connections) {
        socket.close();
      }
    }
  }

  @Test
  void thousandsOfIdleAndHalfOpenConnectionsHoldUpNobody() throws Exception {
    assertTrue(
        ManagementFactory.getOperatingSystemMXBean() instanceof UnixOperatingSystemMXBean machine
            && machine.getMaxFileDescriptorCount() > FILES,
        "this machine allows fewer open connections");
    try (RunningJar service = new RunningJar("-Xmx128m", "-XX:+UseSerialGC")) {
      assertOthersAreAnswered(service);
      long before = LiveMemory.of(service);
      for (int i = 0; i < IDLE; i++) {
        connect(service.port(), "");
      }
      assertOthersAreAnswered(service);
      for (int i = 0; i < HALF_OPEN; i++) {
        connect(service.port(), "POST /v1/sound-level HTTP/1.1\r\nHost: a\r\nConte");
        if (i % 2 == 0) {
          connections.get(connections.size() - 1).shutdownOutput();
        }
      }
      assertOthersAreAnswered(service);
      for (Socket socket : connections) {
        socket.close();
      }
      assertOthersAreAnswered(service);
      long after = LiveMemory.of(service);
      assertTrue(after - before < MEMORY_BYTES, before + " bytes in use became " + after);
    }
  }
}
