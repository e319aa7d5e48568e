package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.footwell.web.SoundLevelCalls.get;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.response.Response;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Addresses and queries that cannot be answered. */
@ExtendWith(RunningServer.class)
class BadAddressTest {
  @AfterEach
  void theServiceStillAnswers() {
    assertEquals("100.0", get(QUERY + "&field=level_db_spl").asString());
  }

  private static Refusal invalid(String query) {
    return Refusal.of(get(query), 422);
  }

  @ParameterizedTest
  @CsvSource({
    "power_w, ten",
    "power_w, ''",
    "power_w, NaN",
    "power_w, Infinity",
    "power_w, -Infinity",
    "power_w, 1e999",
    "power_w, 0x10",
    "power_w, 10f",
    "power_w, 1_000",
    "power_w, 1%20000",
    "power_w, ' '",
    "driver_count, 2.0",
    "driver_count, 1e0",
    "driver_count, 99999999999",
    "drive, both",
    "drive, EACH",
    "drive, 0",
    "spectrum, 100",
    "cabin, 3"
  })
  void aWrongTypeIsToldAtItsPlace(String name, String value) {
    String others = QUERY.replaceAll("&" + name + "=[^&]*", "");
    assertEquals(
        Set.of("/" + name + " wrong-type"),
        invalid(others + "&" + name + "=" + value.replace(" ", "%20")).faults());
  }

  @ParameterizedTest
  @CsvSource({
    "power_w, 0",
    "power_w, -1",
    "power_w, 1e308",
    "driver_count, 0",
    "driver_count, 33",
    "distance_m, 1e-300",
    "crest_factor_db, 41"
  })
  void aValueOutOfBoundsIsToldAtItsPlace(String name, String value) {
    String others = QUERY.replaceAll("&" + name + "=[^&]*", "");
    assertEquals(
        Set.of("/" + name + " not-allowed"), invalid(others + "&" + name + "=" + value).faults());
  }

  @Test
  void aDecimalCommaIsRecognised() {
    assertEquals(
        "crest_factor_db must be a number from 0 to 40 with a decimal point, not a comma.",
        invalid(QUERY + "&crest_factor_db=3,01").detail());
  }

  @Test
  void aParameterGivenTwiceIsRefused() {
    assertEquals(Set.of("/power_w duplicate"), invalid(QUERY + "&power_w=10").faults());
    assertEquals(
        Set.of("/driver/sensitivity/basis duplicate"),
        invalid(QUERY + "&driver.sensitivity.basis=one_watt").faults());
    assertEquals(Set.of("/format duplicate"), invalid(QUERY + "&format=json&format=json").faults());
  }

  @Test
  void anUnknownParameterIsToldWithTheNearestKnown() {
    assertEquals(
        "drver_count is not a known field. Did you mean driver_count?",
        invalid(QUERY + "&drver_count=1").detail());
    assertEquals("colour is not a known field.", invalid(QUERY + "&colour=red").detail());
  }

  @Test
  void aFieldInTheQueryOfAPostIsRefused() {
    Response response =
        given().contentType("application/json").body(GOOD).post(PATH + "?power_w=10&workngs=true");
    Refusal refusal = Refusal.of(response, 422);
    assertEquals(Set.of("/power_w unknown-field", "/workngs unknown-field"), refusal.faults());
    assertEquals(
        "workngs is not a known field. Did you mean workings?", refusal.detailAt("/workngs"));
  }

  @Test
  void anOptionMustBeOneOfItsValues() {
    assertEquals(
        Set.of("/errors not-allowed", "/format not-allowed", "/workings not-allowed"),
        invalid(QUERY + "&format=pdf&workings=yes&errors=txt").faults());
    assertEquals(
        "verdic is not a known field. Did you mean verdict?",
        invalid(QUERY + "&field=verdic").detail());
  }

  @Test
  void aGapInARepeatedGroupIsRefused() {
    String band = "&spectrum.%d.frequency_hz=100&spectrum.%d.level_db=80";
    String other = band.replace("=100", "=125");
    assertEquals(
        Set.of("/spectrum wrong-type"),
        invalid(QUERY + band.formatted(0, 0) + band.formatted(2, 2)).faults());
    assertEquals(Set.of("/spectrum wrong-type"), invalid(QUERY + band.formatted(1, 1)).faults());
    assertEquals(200, get(QUERY + band.formatted(0, 0) + other.formatted(1, 1)).statusCode());
  }

  @Test
  void aNameThatIsBothValueAndGroupIsRefused() {
    assertEquals(
        Set.of("/driver/sensitivity/basis wrong-type"),
        invalid("power_w=1&driver.sensitivity=90&driver.sensitivity.basis=one_watt").faults());
  }

  @Test
  void everyFaultOfAQueryIsToldInOneAnswer() {
    assertEquals(
        Set.of(
            "/colour unknown-field",
            "/drive wrong-type",
            "/power_w not-allowed",
            "/driver/rated_ohm required",
            "/driver/sensitivity/basis required",
            "/driver/sensitivity/level_db_spl wrong-type",
            "/spectrum/0/level_db required"),
        invalid(
                "driver.sensitivity.level_db_spl=loud&power_w=-1&drive=both&colour=red"
                    + "&spectrum.0.frequency_hz=100")
            .faults());
  }

  @Test
  void tooManyParametersAreUnreadable() {
    String answer =
        RawConnection.answer(
            "GET "
                + PATH
                + "?"
                + "a=1&".repeat(1_001)
                + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
    assertEquals(
        "More than 1000 parameters.", Refusal.of(RawConnection.body(answer), 400).detail());
  }

  @ParameterizedTest
  @CsvSource({
    "/v1/soundlevel, There is no such calculation. Did you mean sound-level?",
    "/v1/sound-level/, There is nothing at this address; see /openapi.json.",
    "/v1/sound-level/batch/, There is nothing at this address; see /openapi.json.",
    "/v1/sound-level/more, There is nothing at this address; see /openapi.json.",
    "/v1, There is nothing at this address; see /openapi.json.",
    "/v1/, There is nothing at this address; see /openapi.json.",
    "/v2/sound-level, There is nothing at this address; see /openapi.json.",
    "/V1/sound-level, There is nothing at this address; see /openapi.json.",
    "/problems/unknown, There is no such kind of problem."
  })
  void anUnknownAddressIsNotFound(String address, String detail) {
    assertEquals(detail, Refusal.of(given().get(address), 404).detail());
  }

  @Test
  void anUnknownCalculationIsNotFoundByAnyMethod() {
    for (String method : Set.of("GET", "POST", "PUT", "DELETE", "OPTIONS")) {
      Refusal.of(given().request(method, "/v1/horoscope"), 404);
      Refusal.of(given().request(method, "/v1/horoscope/batch"), 404);
    }
  }
}
