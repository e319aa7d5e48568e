package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.List;
import org.footwell.Version;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What lets any cache between caller and service keep answers. */
@ExtendWith(RunningServer.class)
class CachingTest {

  private static final String ADDRESS = PATH + "?" + QUERY;

  private static String tag() {
    return given().get(ADDRESS).header("ETag");
  }

  @Test
  void anAnswerToAGetMayBeKeptAnHourByAnyone() {
    assertEquals("public, max-age=3600", given().get(ADDRESS).header("Cache-Control"));
  }

  @Test
  void theTagIsStrongQuotedAndCarriesTheVersion() {
    assertTrue(tag().matches("\"" + Version.NUMBER + "-[0-9a-f]+-[0-9a-f]+\""), tag());
  }

  @Test
  void theTagIsTheSameForTheSameAnswerAndAnotherForAnother() {
    assertEquals(tag(), tag());
    assertNotEquals(tag(), given().get(ADDRESS + "&distance_m=2").header("ETag"));
    assertNotEquals(tag(), given().get(ADDRESS + "&format=text").header("ETag"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "%s",
        "W/%s",
        "\"other\", %s",
        "\"other\",%s,\"third\"",
        "  %s  ",
        "*",
        "W/\"a\", W/%s"
      })
  void aKnownTagIsAnsweredWithNotChanged(String pattern) {
    String tag = tag();
    Response response = given().header("If-None-Match", pattern.formatted(tag)).get(ADDRESS);
    assertEquals(304, response.statusCode());
    assertEquals("", response.asString());
    assertEquals(tag, response.header("ETag"));
    assertEquals("public, max-age=3600", response.header("Cache-Control"));
    assertEquals("Accept", response.header("Vary"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"other\"", "W/\"other\"", "", ",", "\"\"", "**"})
  void anotherTagIsAnsweredInFull(String known) {
    assertEquals(200, given().header("If-None-Match", known).get(ADDRESS).statusCode());
  }

  @Test
  void headKnowsTheTagToo() {
    Response response = given().header("If-None-Match", tag()).head(ADDRESS);
    assertEquals(304, response.statusCode());
  }

  @Test
  void aTagOfAnotherAnswerDoesNotMatch() {
    Response response = given().header("If-None-Match", tag()).get(ADDRESS + "&distance_m=2");
    assertEquals(200, response.statusCode());
  }

  @Test
  void aNegotiatedAnswerVariesByAcceptAndAStatedFormatDoesNot() {
    String english = ADDRESS + "&lang=en";
    assertEquals("Accept", given().get(english).header("Vary"));
    assertEquals("Accept", given().header("Accept", "text/csv").get(english).header("Vary"));
    assertNull(given().get(english + "&field=verdict").header("Vary"));
    assertNull(given().get(english + "&format=json").header("Vary"));
  }

  @Test
  void anAnswerVariesByTheLanguageAskedForUnlessTheQueryStatesIt() {
    assertEquals(
        List.of("Accept-Language", "Accept"), given().get(ADDRESS).headers().getValues("Vary"));
    Response stated = given().header("Accept-Language", "de").get(ADDRESS + "&lang=en");
    assertEquals(List.of("Accept"), stated.headers().getValues("Vary"));
    assertEquals("en", stated.header("Content-Language"));
  }

  @Test
  void theFormatInTheQueryGoesBeforeTheAcceptHeader() {
    Response response = given().header("Accept", "text/csv").get(ADDRESS + "&format=json");
    assertEquals("application/json", response.contentType());
    response = given().header("Accept", "image/png").get(ADDRESS + "&format=text");
    assertEquals("text/plain;charset=utf-8", response.contentType());
  }

  @Test
  void aProblemIsNeverKept() {
    Response response = given().get(PATH);
    assertEquals("no-store", response.header("Cache-Control"));
    assertNull(response.header("ETag"));
  }

  @Test
  void anAnswerToAPostHasNoTag() {
    Response response = SoundLevelCalls.post(SoundLevelCalls.GOOD);
    assertNull(response.header("ETag"));
    assertNull(response.header("Cache-Control"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/openapi.json",
        "/openapi.yaml",
        "/openapi-3.1.json",
        "/codes",
        "/codes.json",
        "/",
        "/plan",
        "/plan/main.js",
        "/plan/texts.json",
        "/plan/examples/camper-van.json"
      })
  void aFixedPageMayBeKeptAndAskedAgainByItsTag(String page) {
    Response response = given().get(page);
    assertEquals(200, response.statusCode());
    assertEquals("public, max-age=300", response.header("Cache-Control"));
    String tag = response.header("ETag");
    assertTrue(tag.matches("\"" + Version.NUMBER + "-[0-9a-f-]+\""), tag);
    Response again = given().header("If-None-Match", tag).get(page);
    assertEquals(304, again.statusCode());
    assertEquals("", again.asString());
  }

  @Test
  void theContractIsServedInItsCommittedFormWithTheNewerBesideIt() {
    assertEquals("3.0.3", given().get("/openapi.json").path("openapi"));
    assertEquals("3.1.0", given().get("/openapi-3.1.json").path("openapi"));
  }
}
