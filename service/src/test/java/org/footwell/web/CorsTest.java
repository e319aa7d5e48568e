package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Calls from pages of other origins. */
@ExtendWith(RunningServer.class)
class CorsTest {

  private static final String PAGE = "https://shop.example";

  private static Response preflight(int port, String origin) {
    return given(port)
        .header("Origin", origin)
        .header("Access-Control-Request-Method", "POST")
        .header("Access-Control-Request-Headers", "content-type")
        .options(PATH);
  }

  @Test
  void anyPageMayAskFirstUnlessTheOperatorSaysOtherwise() {
    Response response = preflight(RunningServer.port(), PAGE);
    assertEquals(204, response.statusCode());
    assertEquals("*", response.header("Access-Control-Allow-Origin"));
    assertEquals("GET, HEAD, POST", response.header("Access-Control-Allow-Methods"));
    assertEquals(
        "Content-Type, Content-Encoding, Accept, Authorization, traceparent, X-Request-Id",
        response.header("Access-Control-Allow-Headers"));
    assertEquals("86400", response.header("Access-Control-Max-Age"));
    assertNull(response.header("Access-Control-Allow-Credentials"));
  }

  @Test
  void aPageMayReadTagVerdictAndWhenToComeBack() {
    Response response = given().header("Origin", PAGE).get(PATH + "?" + QUERY);
    assertEquals("*", response.header("Access-Control-Allow-Origin"));
    assertEquals(
        "ETag, Footwell-Verdict, RateLimit, RateLimit-Policy, Retry-After, WWW-Authenticate,"
            + " X-Request-Id",
        response.header("Access-Control-Expose-Headers"));
    assertNull(response.header("Access-Control-Max-Age"));
  }

  @Test
  void aProblemCanBeReadByThePageToo() {
    for (Response response :
        List.of(
            given().header("Origin", PAGE).get(PATH),
            given().header("Origin", PAGE).get("/nowhere"),
            given().header("Origin", PAGE).delete(PATH))) {
      assertEquals("*", response.header("Access-Control-Allow-Origin"));
    }
  }

  @Test
  void aCallThatComesFromNoPageGetsNoHeaders() {
    Response response = given().get(PATH + "?" + QUERY);
    assertNull(response.header("Access-Control-Allow-Origin"));
    assertNull(response.header("Access-Control-Expose-Headers"));
  }

  @Test
  void aListOfOriginsLetsInThoseAndNoOthers() {
    Map<String, String> list =
        Map.of("FOOTWELL_CORS_ORIGINS", "https://shop.example, https://stock.example");
    try (Server server = RunningServer.start(list)) {
      Response allowed = preflight(server.port(), PAGE);
      assertEquals(PAGE, allowed.header("Access-Control-Allow-Origin"));
      assertEquals("Origin", allowed.header("Vary"));

      Response other = preflight(server.port(), "https://other.example");
      assertEquals(204, other.statusCode());
      assertNull(other.header("Access-Control-Allow-Origin"));
      assertNull(other.header("Access-Control-Allow-Methods"));
      assertEquals("Origin", other.header("Vary"));

      Response near = preflight(server.port(), "https://shop.example.evil.example");
      assertNull(near.header("Access-Control-Allow-Origin"));
    }
  }

  @Test
  void withAListEveryAnswerVariesByOrigin() {
    Map<String, String> list = Map.of("FOOTWELL_CORS_ORIGINS", PAGE);
    try (Server server = RunningServer.start(list)) {
      Response response = given(server.port()).get(PATH + "?" + QUERY);
      assertEquals(
          List.of("Origin", "Accept-Language", "Accept"), response.headers().getValues("Vary"));
    }
  }
}
