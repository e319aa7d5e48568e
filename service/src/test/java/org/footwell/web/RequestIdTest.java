package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(RunningServer.class)
class RequestIdTest {

  private static final String HEADER = "X-Request-Id";

  @Test
  void theIdOfTheCallerGoesIntoTheProblemAndBack() {
    Response response = RunningServer.given().header(HEADER, "Order_17.a-b").get("/v1/nothing");
    assertEquals("Order_17.a-b", response.header(HEADER));
    assertEquals("Order_17.a-b", response.path("request_id"));
  }

  @Test
  void aRequestWithoutAnIdIsGivenOneOfItsOwn() {
    Response one = RunningServer.given().get("/v1/nothing");
    Response other = RunningServer.given().get("/v1/nothing");
    assertTrue(one.header(HEADER).matches("[0-9a-f]{16}"), one.header(HEADER));
    assertEquals(one.header(HEADER), one.path("request_id"));
    assertNotEquals(one.header(HEADER), other.header(HEADER));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "a b", "a,b", "a\"b", "a/../b", "ä", "٣", "a\tb", "<b>", "%0a"})
  void anIdThatCouldBeTakenForSomethingElseIsReplaced(String hostile) {
    Response response = RunningServer.given().header(HEADER, hostile).get("/health/live");
    assertTrue(response.header(HEADER).matches("[0-9a-f]{16}"), response.header(HEADER));
  }

  @Test
  void anIdMayHave64CharactersAndNoMore() {
    String longest = "x".repeat(64);
    assertEquals(longest, RunningServer.given().header(HEADER, longest).get("/").header(HEADER));
    Response response = RunningServer.given().header(HEADER, longest + "x").get("/");
    assertEquals(16, response.header(HEADER).length());
  }

  @Test
  void aRequestThatNoRouteSeesHasItTooInHeaderAndProblem() {
    String request =
        """
        GET / HTTP/1.1
        Host: a
        Connection: close
        Expect: more
        X-Request-Id: order-17

        """;
    String answer = RawConnection.answer(request.replace("\n", "\r\n"));
    assertTrue(answer.startsWith("HTTP/1.1 417 "), answer);
    assertTrue(answer.contains("\r\nX-Request-Id: order-17\r\n"), answer);
    assertTrue(RawConnection.body(answer).contains("\"request_id\":\"order-17\""), answer);
  }

  /** By W3C Trace Context, section 3.2.2.3, of zeros only no trace id is valid, nor is version ff. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "00-00000000000000000000000000000000-b7ad6b7169203331-01",
        "00-0af7651916cd43dd8448eb211c80319c-0000000000000000-01",
        "ff-0af7651916cd43dd8448eb211c80319c-b7ad6b7169203331-01",
        "00-0AF7651916CD43DD8448EB211C80319C-b7ad6b7169203331-01",
        "00-0af7651916cd43dd8448eb211c80319c-b7ad6b7169203331-01-more"
      })
  void aTraceThatIsNotValidIsLeftOut(String traceparent) {
    Response response = RunningServer.given().header("traceparent", traceparent).get("/v1/nothing");
    assertNull(response.path("trace_id"));
  }

  @Test
  void aValidTraceStandsInTheProblem() {
    String trace = "0af7651916cd43dd8448eb211c80319c";
    Response response =
        RunningServer.given()
            .header("traceparent", "00-" + trace + "-b7ad6b7169203331-01")
            .get("/v1/nothing");
    assertEquals(trace, response.path("trace_id"));
  }
}
