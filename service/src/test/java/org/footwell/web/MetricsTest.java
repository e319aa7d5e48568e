package org.footwell.web;

import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.RestAssured;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.Version;
import org.footwell.analysis.registry.Analysis;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What whoever runs the service is told, and where. */
class MetricsTest {

  private static final String SOUND_LEVEL = "{calculation=\"sound-level\",operation=\"get\"";

  private Server server;

  @BeforeEach
  void start() {
    server = RunningServer.start(Map.of());
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private List<String> figures() {
    return RunningServer.given(server.port())
        .get("/metrics")
        .then()
        .statusCode(200)
        .extract()
        .asString()
        .lines()
        .toList();
  }

  private double figure(String nameAndLabels) {
    return figures().stream()
        .filter(line -> line.startsWith(nameAndLabels + " "))
        .mapToDouble(line -> Double.parseDouble(line.substring(nameAndLabels.length() + 1)))
        .findFirst()
        .orElseThrow(() -> new AssertionError(nameAndLabels + " is missing"));
  }

  private void ask(String address) {
    RestAssured.given().port(server.port()).urlEncodingEnabled(false).get(address);
  }

  @Test
  void everyAnswerIsCountedWithItsStatusAndFallsIntoABucket() {
    ask(PATH + "?" + QUERY);
    ask(PATH + "?" + QUERY);
    ask(PATH);
    assertEquals(2, figure("footwell_answers_total" + SOUND_LEVEL + ",status=\"200\"}"));
    assertEquals(1, figure("footwell_answers_total" + SOUND_LEVEL + ",status=\"422\"}"));
    assertEquals(3, figure("footwell_calculation_seconds_count" + SOUND_LEVEL + "}"));
    assertEquals(3, figure("footwell_calculation_seconds_bucket" + SOUND_LEVEL + ",le=\"+Inf\"}"));
    assertTrue(figure("footwell_calculation_seconds_sum" + SOUND_LEVEL + "}") > 0);
  }

  @Test
  void theBucketsReachFromAUsualAnswerToTheDeadline() {
    ask(PATH + "?" + QUERY);
    List<String> buckets =
        figures().stream()
            .filter(line -> line.startsWith("footwell_calculation_seconds_bucket" + SOUND_LEVEL))
            .toList();
    assertEquals(
        List.of(
            "5.0E-4", "0.001", "0.0025", "0.005", "0.01", "0.025", "0.05", "0.1", "0.25", "0.5",
            "1.0", "2.5", "5.0", "10.0", "+Inf"),
        buckets.stream().map(line -> line.replaceAll(".*le=\"([^\"]*)\".*", "$1")).toList());
    List<Double> counts =
        buckets.stream()
            .map(line -> Double.valueOf(line.substring(line.lastIndexOf(' ') + 1)))
            .toList();
    assertEquals(counts.stream().sorted().toList(), counts, "each holds what those below it hold");
  }

  /** Whoever may call could otherwise fill the memory of the service and of what scrapes it. */
  @Test
  void nothingOfACallerBecomesALabel() {
    for (int i = 0; i < 20; i++) {
      ask("/v1/made-up-" + i);
      ask("/v1/made-up-" + i + "/sweep");
      ask("/v1/sound-level?made_up_" + i + "=1");
      ask("/made-up-" + i);
    }
    List<String> own = figures().stream().filter(line -> line.startsWith("footwell_")).toList();
    assertFalse(own.stream().anyMatch(line -> line.contains("made")), own::toString);
    Set<String> calculations = new TreeSet<>(Calculations.BY_ID.keySet());
    calculations.add("none");
    assertTrue(calculations.containsAll(valuesOf("calculation", own)), own::toString);
    Set<String> operations =
        Stream.concat(
                Stream.of("get", "post", "of-plan", "batch", "sweep"),
                Stream.of(Analysis.values()).map(Analysis::id))
            .collect(Collectors.toSet());
    assertTrue(operations.containsAll(valuesOf("operation", own)), own::toString);
    assertEquals(
        Set.of("calculation", "operation", "status", "le", "version"),
        own.stream()
            .flatMap(line -> Pattern.compile("[{,](\\w+)=").matcher(line).results())
            .map(label -> label.group(1))
            .collect(Collectors.toSet()));
  }

  private static Set<String> valuesOf(String label, List<String> lines) {
    Pattern value = Pattern.compile("[{,]" + label + "=\"([^\"]*)\"");
    return lines.stream()
        .flatMap(line -> value.matcher(line).results())
        .map(found -> found.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void versionMemoryAndCollectionsOfGarbageAreTold() {
    assertEquals(1, figure("footwell_build_info{version=\"" + Version.NUMBER + "\"}"));
    String all = String.join("\n", figures());
    for (String name :
        List.of(
            "jvm_info",
            "jvm_memory_used_bytes",
            "jvm_memory_max_bytes",
            "jvm_gc_overhead",
            "jvm_gc_memory_allocated_bytes_total",
            "jvm_threads_live_threads",
            "process_cpu_usage",
            "process_uptime_seconds",
            "process_files_open_files")) {
      assertTrue(all.contains("\n# TYPE " + name + " "), name + " is missing in " + all);
    }
  }

  private static int freePort() throws IOException {
    try (ServerSocket any = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return any.getLocalPort();
    }
  }

  private static Server startWithPort(int port) {
    return RunningServer.start(Map.of("FOOTWELL_METRICS_PORT", Integer.toString(port)));
  }

  @Test
  void atAPortOfTheirOwnTheyAreNowhereElse() throws IOException {
    int port = freePort();
    try (Server apart = startWithPort(port)) {
      RestAssured.given().port(apart.port()).get(PATH + "?" + QUERY).then().statusCode(200);
      RestAssured.given().port(apart.port()).get("/metrics").then().statusCode(404);
      String figures =
          RestAssured.given()
              .port(port)
              .get("/metrics")
              .then()
              .statusCode(200)
              .contentType("text/plain;version=0.0.4;charset=utf-8")
              .extract()
              .asString();
      assertTrue(
          figures.contains("footwell_answers_total" + SOUND_LEVEL + ",status=\"200\"} 1"), figures);
    }
    assertThrows(IOException.class, () -> new RawConnection(port).close(), "it closes at the end");
  }

  @Test
  void thatPortGivesNothingElse() throws IOException {
    int port = freePort();
    try (Server apart = startWithPort(port)) {
      assertTrue(apart.port() != port);
      for (String path : List.of(PATH + "?" + QUERY, "/", "/health/live", "/metrics/")) {
        RestAssured.given().port(port).urlEncodingEnabled(false).get(path).then().statusCode(404);
      }
      RestAssured.given().port(port).head("/metrics").then().statusCode(200);
      RestAssured.given()
          .port(port)
          .post("/metrics")
          .then()
          .statusCode(405)
          .header("Allow", "GET, HEAD");
    }
  }

  @Test
  void aPortThatIsTakenIsToldInASentence() {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> startWithPort(server.port()));
    assertTrue(
        refused.getMessage().startsWith("FOOTWELL_METRICS_PORT must be a port that is free"),
        refused.getMessage());
  }
}
