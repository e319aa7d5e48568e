package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.io.IOException;
import java.time.Duration;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.footwell.web.limits.Admission;
import org.greenbytes.http.sfv.IntegerItem;
import org.greenbytes.http.sfv.ListElement;
import org.greenbytes.http.sfv.OuterList;
import org.greenbytes.http.sfv.Parametrizable;
import org.greenbytes.http.sfv.Parser;
import org.greenbytes.http.sfv.StringItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How often callers may call, over HTTP and by a clock that stands still until it is moved. */
@Tag("long")
class CallLimitsTest {

  /** The SHA-256 of {@code a-key}. */
  private static final String HASH =
      "2a8a1240f50636655520ac8ed22aa29473b8517b4abfdbc3bc03bcad73fc8849";

  private final AtomicLong now = new AtomicLong();
  private Server server;

  private void start(String... settings) {
    Map<String, String> environment = new HashMap<>();
    for (String setting : settings) {
      String[] sides = setting.split("=", 2);
      environment.put("FOOTWELL_" + sides[0], sides[1]);
    }
    server = RunningServer.start(environment, now::get);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private void later(Duration time) {
    now.addAndGet(time.toNanos());
  }

  private Response call(String... header) {
    return header.length == 0
        ? given(server.port()).get(PATH + "?" + QUERY)
        : given(server.port()).header(header[0], header[1]).get(PATH + "?" + QUERY);
  }

  /** A caller behind a proxy on this machine. */
  private int statusFor(String address) {
    return call("X-Forwarded-For", address).statusCode();
  }

  /** The items of a header by RFC 9651, as another's reader finds them, by their names. */
  private static Map<String, Map<String, Object>> items(Response answer, String header) {
    Map<String, Map<String, Object>> items = new HashMap<>();
    OuterList list = Parser.parseList(answer.header(header));
    for (ListElement<?> element : list.get()) {
      Map<String, Object> parameters = new HashMap<>();
      ((Parametrizable<?>) element)
          .getParams()
          .forEach(
              (name, value) -> {
                if (value instanceof IntegerItem number) {
                  parameters.put(name, number.getAsLong());
                } else {
                  parameters.put(name, ((StringItem) value).get());
                }
              });
      items.put(((StringItem) element).get(), parameters);
    }
    return items;
  }

  @Test
  void afterExactlySoManyCallsComesARefusalAndAfterAWhileOneMore() {
    start("CALLS_PER_MINUTE=30", "CALLS_AT_ONCE=5");
    for (int left = 4; left >= 0; left--) {
      Response answer = call();
      assertEquals(200, answer.statusCode());
      assertEquals(Map.of("calls", Map.of("q", 5L, "w", 10L)), items(answer, "RateLimit-Policy"));
      assertEquals(
          Map.of("calls", Map.of("r", (long) left, "t", 2L * (5 - left))),
          items(answer, "RateLimit"));
    }
    Response refused = call();
    assertEquals(429, refused.statusCode());
    assertEquals("2", refused.header("Retry-After"));
    assertEquals(Map.of("calls", Map.of("r", 0L, "t", 2L)), items(refused, "RateLimit"));
    assertEquals("/problems/too-many-calls", refused.path("type"));
    assertEquals(
        "More calls than the 30 a minute that are allowed; come again in 2 s.",
        refused.path("detail"));

    later(Duration.ofMillis(1_999));
    assertEquals(429, call().statusCode());
    later(Duration.ofMillis(1));
    assertEquals(200, call().statusCode());
    assertEquals(429, call().statusCode());
    later(Duration.ofHours(1));
    for (int i = 0; i < 5; i++) {
      assertEquals(200, call().statusCode());
    }
    assertEquals(429, call().statusCode());
  }

  @Test
  void withoutANumberAtOnceAMinutesMayBeSavedUp() {
    start("CALLS_PER_MINUTE=3");
    Response answer = call();
    assertEquals(Map.of("calls", Map.of("q", 3L, "w", 60L)), items(answer, "RateLimit-Policy"));
    assertEquals(200, call().statusCode());
    assertEquals(200, call().statusCode());
    assertEquals("20", call().header("Retry-After"));
  }

  @Test
  void whateverIsAskedCountsButAskingFirstDoesNot() {
    start("CALLS_PER_MINUTE=4");
    for (int i = 0; i < 10; i++) {
      Response asked = given(server.port()).options(PATH);
      assertEquals(204, asked.statusCode());
      assertNull(asked.header("RateLimit"));
      assertEquals(200, given(server.port()).get("/health/live").statusCode());
      assertEquals(200, given(server.port()).get("/openapi.json").statusCode());
    }
    given(server.port()).head(PATH + "?" + QUERY);
    given(server.port()).get("/v1/nothing");
    given(server.port()).delete(PATH);
    given(server.port()).contentType("application/json").body("nonsense").post(PATH);
    assertEquals(429, call().statusCode());
    assertEquals(204, given(server.port()).options(PATH).statusCode());
  }

  @Test
  void aKeyCountsByItsNameAndAnybodyElseByTheirAddress() {
    start("CALLS_PER_MINUTE=2", "KEYS=shop:" + HASH + ",stock:" + "0".repeat(64));
    assertEquals(200, call("Authorization", "Bearer a-key").statusCode());
    assertEquals(401, call().statusCode());
    assertEquals(401, call("Authorization", "Bearer guess").statusCode());
    assertEquals(429, call("Authorization", "Bearer guess").statusCode());
    assertEquals(200, call("Authorization", "Bearer a-key").statusCode());
    assertEquals(429, call("Authorization", "Bearer a-key").statusCode());
    assertTrue(
        given(server.port())
            .get("/metrics")
            .asString()
            .lines()
            .toList()
            .containsAll(
                List.of(
                    "footwell_turned_away_total{status=\"401\"} 2.0",
                    "footwell_turned_away_total{status=\"429\"} 2.0")));
  }

  @Test
  void whatAStrangerSaysOfItsAddressIsIgnored() {
    start("CALLS_PER_MINUTE=2", "PROXIES=192.0.2.0/24");
    assertEquals(200, statusFor("203.0.113.1"));
    assertEquals(200, statusFor("203.0.113.2"));
    assertEquals(429, statusFor("203.0.113.3"));
  }

  @Test
  void ofANamedProxyEachCallerCountsForItself() {
    start("CALLS_PER_MINUTE=1", "PROXIES=127.0.0.1");
    assertEquals(200, statusFor("203.0.113.1"));
    assertEquals(200, statusFor("203.0.113.2"));
    assertEquals(429, statusFor("203.0.113.1"));
    assertEquals(
        429, statusFor("203.0.113.9, 203.0.113.1"), "the left end is the caller's own word");
    assertEquals(200, statusFor("2001:db8:1:2::1"));
    assertEquals(429, statusFor("2001:db8:1:2:ffff::2"));
    assertEquals(200, statusFor("2001:db8:1:3::1"));
    assertEquals(200, call().statusCode(), "the proxy for itself");
  }

  /** By the real clock, and with hardly any calls coming back: one a minute. */
  @Test
  void aRequestThatIsMuchWorkCountsForMoreCallsOnceItIsAnswered() {
    server =
        RunningServer.start(
            Map.of("FOOTWELL_CALLS_PER_MINUTE", "1", "FOOTWELL_CALLS_AT_ONCE", "100000"));
    assertEquals(200, call().statusCode());
    long before = left(call());
    long begin = System.nanoTime();
    Response sweep =
        given(server.port())
            .contentType("application/json")
            .body(
                "{\"request\":"
                    + GOOD
                    + ",\"inputs\":[{\"path\":\"power_w\",\"from\":1,\"to\":100,\"count\":20000}],"
                    + "\"outputs\":[\"level_db_spl\"]}")
            .post(PATH + "/sweep");
    assertEquals(200, sweep.statusCode(), sweep::asString);
    long took = Duration.ofNanos(System.nanoTime() - begin).toMillis();
    assertTrue(took > 40, "too quick a machine for this test");
    long more = before - left(call()) - 2;
    assertTrue(more >= 1, more + " more calls for a sweep of " + took + " ms");
    assertTrue(
        more <= took / Admission.CALL_MS, more + " more calls for a sweep of " + took + " ms");
  }

  private static long left(Response answer) {
    return (Long) items(answer, "RateLimit").get("calls").get("r");
  }

  /** The time in which the service waits for a caller is no work. */
  @Test
  void aSlowCallerPaysForTheWorkOnly() throws IOException {
    start("CALLS_PER_MINUTE=1", "CALLS_AT_ONCE=100");
    try (RawConnection slow = begun()) {
      untilTheCallerIsWaitedFor();
      later(Duration.ofSeconds(1));
      slow.send("0\r\n\r\n");
      slow.readUntil("\r\n0\r\n\r\n");
    }
    assertEquals(98, left(call()));
  }

  @Test
  void onlySoManyRequestsOfACallerMayBeUnderWay() throws IOException {
    start("UNDER_WAY=2", "PROXIES=127.0.0.1");
    try (RawConnection one = begun();
        RawConnection other = begun()) {
      Response refused = call();
      assertEquals(429, refused.statusCode());
      assertEquals("1", refused.header("Retry-After"));
      assertEquals(
          "More than 2 requests at a time; wait for an answer before the next.",
          refused.path("detail"));
      assertEquals(
          Map.of("under-way", Map.of("q", 2L, "qu", "concurrent-requests")),
          items(refused, "RateLimit-Policy"));
      assertEquals(Map.of("under-way", Map.of("r", 0L)), items(refused, "RateLimit"));
      assertEquals(200, statusFor("203.0.113.1"), "others go on");

      one.sendChunk(GOOD + "\n");
      one.send("0\r\n\r\n");
      one.readUntil("\r\n0\r\n\r\n");
      assertEquals(200, call().statusCode());
      other.send("0\r\n\r\n");
      other.readUntil("0\r\n\r\n");
    }
  }

  /** What is left of its body is read for a moment after the answer, and holds no place any more. */
  @Test
  void whoHasItsAnswerMayAskAgainAtOnce() throws IOException {
    start("UNDER_WAY=1");
    try (RawConnection refused = new RawConnection(server.port())) {
      refused.send(
          "POST "
              + PATH
              + " HTTP/1.1\r\nHost: a\r\nContent-Type: text/plain\r\n"
              + "Content-Length: 5000\r\n\r\nthe rest never comes");
      refused.readUntil("application/json");
      assertEquals(200, call().statusCode());
    }
  }

  /** Whatever ends a request, the place it took is free again. */
  @Test
  void aRequestThatFailsOrIsBrokenOffTakesNoPlaceForGood() throws IOException {
    start("UNDER_WAY=1");
    given(server.port()).get("/v1/nothing");
    given(server.port()).delete(PATH);
    given(server.port()).get(PATH);
    given(server.port()).header("Accept", "image/png").get(PATH + "?" + QUERY);
    given(server.port()).contentType("application/json").body("nonsense").post(PATH);
    assertEquals(200, call().statusCode());
    begun().close();
    long begin = System.nanoTime();
    int status = call().statusCode();
    while (status == 429 && System.nanoTime() - begin < Duration.ofSeconds(10).toNanos()) {
      status = call().statusCode();
    }
    assertEquals(200, status);
  }

  /** What has been answered so far comes a moment before: until then the clock measures work. */
  private static void untilTheCallerIsWaitedFor() {
    long begin = System.nanoTime();
    while (Thread.getAllStackTraces().entrySet().stream()
        .filter(thread -> thread.getKey().getState() == Thread.State.WAITING)
        .flatMap(thread -> Arrays.stream(thread.getValue()))
        .noneMatch(frame -> frame.getMethodName().equals("forMore"))) {
      assertTrue(System.nanoTime() - begin < Duration.ofSeconds(10).toNanos(), "nobody waits");
      Thread.onSpinWait();
    }
  }

  /** A batch whose first row is answered, and which waits for the next. */
  private RawConnection begun() throws IOException {
    RawConnection connection = new RawConnection(server.port());
    connection.send(
        "POST "
            + PATH
            + "/batch HTTP/1.1\r\nHost: a\r\nContent-Type: application/x-ndjson\r\n"
            + "Transfer-Encoding: chunked\r\n\r\n");
    connection.sendChunk(GOOD + "\n");
    connection.readUntil("\"verdict\"");
    return connection;
  }
}
