package org.footwell.web;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What no well-behaved client sends still gets a problem answer, never a page of the server's. */
@ExtendWith(RunningServer.class)
@Timeout(value = 60, unit = SECONDS)
@Tag("long")
class RawRequestTest {

  private static final String REST = " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";
  private static final String JSON = "Content-Type: application/json\r\n";

  private static final ContractDocument CONTRACT = ContractDocument.built();

  /** Which requests never reach an operation is no matter to a caller: any may be refused so. */
  private static void assertDeclared(String name, JsonNode operation, int status) {
    if (status != 404 && status != 405 && status != 422) {
      JsonNode declared = CONTRACT.problem(operation, status);
      assertTrue(
          declared.at("/content/application~1problem+json").isObject(),
          () -> name + " does not declare " + status);
    }
  }

  @AfterEach
  void theServiceStillAnswers() {
    assertEquals("100.0", SoundLevelCalls.get(QUERY + "&field=level_db_spl").asString());
  }

  /** The problem in an answer, whose status line and body must agree, and which is promised. */
  private static Refusal problem(String answer, int status) {
    CONTRACT.operations().forEach((name, operation) -> assertDeclared(name, operation, status));
    assertTrue(answer.startsWith("HTTP/1.1 " + status + " "), answer);
    assertTrue(answer.contains("\r\nContent-Type: application/problem+json\r\n"), answer);
    return Refusal.of(RawConnection.body(answer), status);
  }

  private static Refusal get(String address, int status) {
    return problem(RawConnection.answer("GET " + address + REST), status);
  }

  @Test
  void aBareBarInTheQueryIsReadAsItStands() {
    assertEquals(
        "drive must be one of shared, each.",
        get(PATH + "?" + QUERY + "&drive=a|b", 422).detailAt("/drive"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        PATH + "?drive=a b",
        "/v1/%zz",
        "/v1/%",
        "/v1/%00",
        "/v1/../../etc",
        "no-slash",
        "*",
        "/v1/%c0%ae"
      })
  void anAddressThatIsNotWellFormedIsUnreadable(String address) {
    assertEquals(
        "The address or a header is not well formed. In a query write + as %2B and | as %7C.",
        get(address, 400).detail());
  }

  @ParameterizedTest
  @ValueSource(strings = {"%zz", "%", "%4", "a=%zz", "%=1", "drive=%-1"})
  void aBrokenEscapeInTheQueryIsUnreadable(String query) {
    assertEquals(
        "A % in the address must be followed by two hex digits.",
        get(PATH + "?" + query, 400).detail());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "GARBAGE\r\n\r\n",
        "\r\n\r\nGARBAGE\r\n\r\n",
        "\u0000\u0001\u0002\r\n\r\n",
        "\u0016\u0003\u0001\u0002\u0000\r\n\r\n",
        "GET\r\n\r\n",
        "GET / HTTP/1.1\r\n\r\n",
        "GET / HTTP/1.1\r\nHost localhost\r\n\r\n",
        "GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n"
      })
  void garbageIsUnreadable(String request) {
    problem(RawConnection.answer(request), 400);
  }

  @Test
  void contradictingLengthsAreUnreadable() {
    String start = "POST " + PATH + " HTTP/1.1\r\nHost: localhost\r\n" + JSON;
    problem(RawConnection.answer(start + "Content-Length: 2\r\nContent-Length: 3\r\n\r\n{}"), 400);
    problem(RawConnection.answer(start + "Content-Length: two\r\n\r\n{}"), 400);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/v1//sound-level", "/v1/sound-level;a=b", "//v1/sound-level"})
  void anAddressThatIsNearlyRightIsNotFound(String address) {
    get(address + "?" + QUERY, 404);
  }

  @Test
  void aHeaderThatIsTooLargeIsRefused() {
    String answer =
        RawConnection.answer(
            "GET "
                + PATH
                + " HTTP/1.1\r\nHost: localhost\r\nX-Long: "
                + "x".repeat(20_000)
                + "\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 431 "), answer);
    assertTrue(answer.contains("\r\nContent-Type: application/problem+json\r\n"), answer);
    Refusal.tellsNothingOfTheInside(RawConnection.body(answer));
  }

  @Test
  void anAddressThatIsTooLongIsRefused() {
    String answer = RawConnection.answer("GET " + PATH + "?a=" + "x".repeat(20_000) + REST);
    assertTrue(answer.startsWith("HTTP/1.1 414 "), answer);
    assertTrue(answer.contains("\r\nContent-Type: application/problem+json\r\n"), answer);
    Refusal.tellsNothingOfTheInside(RawConnection.body(answer));
  }

  @Test
  void anUnknownVersionOfTheProtocolIsRefusedWithoutAPage() {
    String answer = RawConnection.answer("GET / HTTP/9.9\r\nHost: localhost\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 505 "), answer);
    Refusal.tellsNothingOfTheInside(RawConnection.body(answer));
  }

  @Test
  void twoRequestsOnOneConnectionGetTwoAnswers() throws IOException {
    try (RawConnection connection = new RawConnection()) {
      String first = " HTTP/1.1\r\nHost: localhost\r\n\r\n";
      connection.send("GET " + PATH + first + "GET " + PATH + "?" + QUERY + REST);
      String both = connection.readAll();
      assertTrue(both.startsWith("HTTP/1.1 422 "), both);
      assertTrue(both.contains("}HTTP/1.1 200 "), both);
    }
  }

  @Test
  void aConnectionLivesOnAfterAProblem() throws IOException {
    try (RawConnection connection = new RawConnection()) {
      String post = "POST " + PATH + " HTTP/1.1\r\nHost: localhost\r\n" + JSON;
      connection.send(post + "Content-Length: 1\r\n\r\n{");
      assertFalse(connection.readUntil("}").isEmpty());
      connection.send(post + "Content-Length: " + GOOD.length() + "\r\n\r\n" + GOOD);
      assertTrue(connection.readUntil("]}").startsWith("HTTP/1.1 200 "));
    }
  }

  @Test
  void theProblemStatesTheStatusOfTheStatusLine() {
    String large = "X-Long: " + "x".repeat(20_000) + "\r\n";
    problem(RawConnection.answer("GET / HTTP/1.1\r\nHost: localhost\r\n" + large + "\r\n"), 431);
    get("/?a=" + "x".repeat(20_000), 414);
    problem(RawConnection.answer("GET / HTTP/9.9\r\nHost: localhost\r\n\r\n"), 505);
  }

  @Test
  void whatNoRouteSeesIsToldAsTextToo() {
    String answer =
        RawConnection.answer(
            "POST "
                + PATH
                + "?errors=text HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                + JSON
                + "Expect: a-dance\r\nContent-Length: 2\r\n\r\n{}");
    assertTrue(answer.startsWith("HTTP/1.1 200 "), answer);
    assertTrue(answer.contains("\r\nContent-Type: text/plain;charset=utf-8\r\n"), answer);
    String told = RawConnection.body(answer);
    assertTrue(told.contains("The header Expect can only ask for 100-continue."), told);
  }

  @Test
  void anExpectationThatCannotBeMetIsRefused() {
    String post = "POST " + PATH + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + JSON;
    assertEquals(
        "The header Expect can only ask for 100-continue.",
        problem(RawConnection.answer(post + "Expect: a-dance\r\nContent-Length: 2\r\n\r\n{}"), 417)
            .detail());
  }

  @Test
  void aNewerProtocolIsToldWhichIsSpoken() {
    assertEquals(
        "Send the request in HTTP/1.1.",
        problem(RawConnection.answer("PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n"), 426).detail());
    assertEquals(
        "Send the request in HTTP/1.1.",
        problem(RawConnection.answer("GET / HTTP/9.9\r\nHost: localhost\r\n\r\n"), 505).detail());
  }

  @Test
  void aBodyThatBreaksOffIsUnreadable() throws IOException {
    String post = "POST " + PATH + " HTTP/1.1\r\nHost: localhost\r\n" + JSON;
    try (RawConnection connection = new RawConnection()) {
      connection.send(post + "Content-Length: 50\r\n\r\n{");
      connection.endSending();
      problem(connection.readAll(), 400);
    }
    problem(RawConnection.answer(post + "Transfer-Encoding: chunked\r\n\r\nzz\r\n{}\r\n"), 400);
  }

  @Test
  void aBodyThatIsShorterThanStatedIsToldInSeconds() throws IOException {
    long begin = System.nanoTime();
    try (RawConnection connection = new RawConnection()) {
      connection.send(
          "POST "
              + PATH
              + " HTTP/1.1\r\nHost: localhost\r\n"
              + JSON
              + "Content-Length: 50\r\n\r\n{");
      Refusal refusal = problem(connection.readUntil("}"), 400);
      assertEquals(
          "The body breaks off: it is shorter than stated, or nothing more of it came for 5 seconds.",
          refusal.detail());
    }
    long took = (System.nanoTime() - begin) / 1_000_000;
    assertTrue(took < 10_000, () -> "it took " + took + " ms");
  }

  /** While a caller waits for leave to send its body, the answer must not wait for the body. */
  @Test
  void aCallerThatAsksBeforeItSendsIsRefusedAtOnce() throws IOException {
    try (RawConnection connection = new RawConnection()) {
      connection.send(
          "POST "
              + PATH
              + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: text/plain\r\n"
              + "Expect: 100-continue\r\nContent-Length: 50\r\n\r\n");
      String answer = connection.readUntil("}");
      assertTrue(answer.startsWith("HTTP/1.1 415 "), answer);
      assertFalse(answer.contains("HTTP/1.1 100"), answer);
    }
  }

  @Test
  void anUnknownMethodIsToldWithThoseAllowed() {
    String answer = RawConnection.answer("BREW " + PATH + REST);
    problem(answer, 405);
    assertTrue(answer.contains("\r\nAllow: GET, HEAD, POST, OPTIONS\r\n"), answer);
  }
}
