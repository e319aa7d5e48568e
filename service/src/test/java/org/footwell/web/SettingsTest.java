package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.footwell.Calculations;
import org.footwell.web.request.Pace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SettingsTest {

  private static final Pace USUAL = new Pace(Duration.ofSeconds(10), 16_384, Duration.ofMinutes(5));

  private static final OrderlyStop USUAL_STOP =
      new OrderlyStop(Duration.ofSeconds(2), Duration.ofSeconds(30));

  @Test
  void withoutAnythingSetTheServiceListensLocallyOn8080() {
    assertEquals(
        SettingsBuilder.builder()
            .host("127.0.0.1")
            .port(8080)
            .deadline(Duration.ofSeconds(10))
            .bodyBytes(1_048_576)
            .uploadBytes(67_108_864)
            .pace(USUAL)
            .stop(USUAL_STOP)
            .origins(List.of("*"))
            .logRequests(false)
            .build(),
        Settings.from(Map.of("PATH", "/bin")));
  }

  @Test
  void aPortThatIsTakenIsToldInASentence() throws IOException {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        Server server =
            new Server(
                Map.of(),
                Calculations.PLAN,
                Settings.from(Map.of("FOOTWELL_PORT", Integer.toString(taken.getLocalPort()))),
                "1")) {
      IllegalArgumentException refused =
          assertThrows(IllegalArgumentException.class, server::start);
      assertTrue(
          refused.getMessage().startsWith("FOOTWELL_PORT must be a port that is free"),
          refused.getMessage());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"nothere.invalid", "192.0.2.1", "::ffff"})
  void aHostThatIsNotThisMachineIsToldInASentence(String host) {
    Settings settings = Settings.from(Map.of("FOOTWELL_HOST", host, "FOOTWELL_PORT", "0"));
    try (Server server = new Server(Map.of(), Calculations.PLAN, settings, "1")) {
      IllegalArgumentException refused =
          assertThrows(IllegalArgumentException.class, server::start);
      assertEquals(
          "FOOTWELL_HOST must be a name or an address of this machine, not " + host,
          refused.getMessage());
    }
  }

  @Test
  void aMisspeltVariableIsNamedWithTheNearest() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                Settings.from(
                    Map.of(
                        "FOOTWELL_DEADLNE_MS", "250",
                        "FOOTWELL_CORS_ORIGIN", "*",
                        "footwell_port", "1",
                        "FOOTWELL_BODY_BYTES", "none")));
    assertEquals(
        """
        FOOTWELL_BODY_BYTES must be a whole number from 1000 to 268435456, not none
        FOOTWELL_CORS_ORIGIN is no setting. Did you mean FOOTWELL_CORS_ORIGINS?
        FOOTWELL_DEADLNE_MS is no setting. Did you mean FOOTWELL_DEADLINE_MS?
        footwell_port is no setting. Did you mean FOOTWELL_PORT?""",
        refused.getMessage());
  }

  /** Programs that call the service have variables of their own, and so have orchestrators. */
  @Test
  void aVariableThatIsLikeNoSettingIsNoFault() {
    Settings.from(
        Map.of(
            "FOOTWELL_URL", "http://localhost:8080",
            "FOOTWELL_SERVICE_HOST", "10.0.0.1",
            "FOOTWELL_PORT_8080_TCP_ADDR", "10.0.0.1"));
  }

  @Test
  void everySettingIsTakenFromItsVariable() {
    assertEquals(
        SettingsBuilder.builder()
            .host("0.0.0.0")
            .port(0)
            .deadline(Duration.ofMillis(250))
            .bodyBytes(2_000)
            .uploadBytes(3_000)
            .pace(new Pace(Duration.ofMillis(500), 600, Duration.ofMillis(700)))
            .stop(new OrderlyStop(Duration.ofMillis(800), Duration.ofMillis(900)))
            .origins(List.of("https://a.example", "https://b.example"))
            .logRequests(true)
            .build(),
        Settings.from(
            Map.ofEntries(
                Map.entry("FOOTWELL_LOG_REQUESTS", "yes"),
                Map.entry("FOOTWELL_HOST", "0.0.0.0"),
                Map.entry("FOOTWELL_PORT", "0"),
                Map.entry("FOOTWELL_DEADLINE_MS", "250"),
                Map.entry("FOOTWELL_BODY_BYTES", "2000"),
                Map.entry("FOOTWELL_UPLOAD_BYTES", "3000"),
                Map.entry("FOOTWELL_PATIENCE_MS", "500"),
                Map.entry("FOOTWELL_LEAST_RATE", "600"),
                Map.entry("FOOTWELL_BODY_MS", "700"),
                Map.entry("FOOTWELL_STOP_DELAY_MS", "800"),
                Map.entry("FOOTWELL_STOP_MS", "900"),
                Map.entry("FOOTWELL_CORS_ORIGINS", "https://a.example , https://b.example"))));
  }

  @ParameterizedTest
  @CsvSource({
    "FOOTWELL_PORT, 0, 65535",
    "FOOTWELL_DEADLINE_MS, 1, 600000",
    "FOOTWELL_BODY_BYTES, 1000, 268435456",
    "FOOTWELL_UPLOAD_BYTES, 1000, 268435456",
    "FOOTWELL_PATIENCE_MS, 1, 600000",
    "FOOTWELL_LEAST_RATE, 1, 1073741824",
    "FOOTWELL_BODY_MS, 1, 86400000",
    "FOOTWELL_STOP_DELAY_MS, 0, 600000",
    "FOOTWELL_STOP_MS, 0, 3600000"
  })
  void aNumberMayBeAtItsBoundsButNotBeyond(String name, int least, int most) {
    Settings.from(Map.of(name, Integer.toString(least)));
    Settings.from(Map.of(name, Integer.toString(most)));
    for (String wrong :
        List.of(
            Integer.toString(least - 1), Integer.toString(most + 1), "", "ten", "1.5", " 5000")) {
      IllegalArgumentException refused =
          assertThrows(
              IllegalArgumentException.class, () -> Settings.from(Map.of(name, wrong)), wrong);
      assertEquals(
          name + " must be a whole number from " + least + " to " + most + ", not " + wrong,
          refused.getMessage());
    }
  }
}
