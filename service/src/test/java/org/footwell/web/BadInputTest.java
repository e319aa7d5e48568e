package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.LEVEL_DB_SPL;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.post;
import static org.footwell.web.SoundLevelCalls.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bodies that cannot be answered: each is refused with every fault, and the service goes on. */
@ExtendWith(RunningServer.class)
class BadInputTest {

  @AfterEach
  void theServiceStillAnswers() {
    assertEquals(
        LEVEL_DB_SPL, Example.read(post(GOOD).asString()).at("/result/level_db_spl").asDouble());
  }

  private static Refusal invalid(String body) {
    return Refusal.of(post(body), 422);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{",
        "}",
        "{\"rated_ohm\":",
        "{\"rated_ohm\":4,}",
        "{rated_ohm:4}",
        "{'rated_ohm':4}",
        "x",
        "{\"rated_ohm\":NaN}",
        "{\"rated_ohm\":Infinity}",
        "{\"rated_ohm\":-Infinity}",
        "{\"rated_ohm\":4,5}",
        "{\"rated_ohm\":04}",
        "{\"rated_ohm\":+4}",
        "{\"rated_ohm\":.5}",
        "{} {}",
        "{}x",
        "<a/>",
        "rated_ohm=4",
        "null",
        " ",
        "\u0000",
        "{\"a\":\"\u0001\"}"
      })
  void whatIsNotJsonIsUnreadable(String body) {
    assertEquals(Set.of(), Refusal.of(post(body), 400).faults());
  }

  @Test
  void anEmptyBodyIsUnreadable() {
    Response response = given().contentType("application/json").post(PATH);
    assertEquals("The body is empty.", Refusal.of(response, 400).detail());
  }

  @Test
  void aBodyThatBreaksOffIsToldByLineAndColumn() {
    assertEquals(
        "The body ends in the middle of the JSON, at line 2, column 5.",
        Refusal.of(post("{\n\"ra\""), 400).detail());
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "5", "\"x\"", "true", "[{}]"})
  void aBodyThatIsNoGroupIsInvalidAsAWhole(String body) {
    Refusal refusal = invalid(body);
    assertEquals(Set.of(" wrong-type"), refusal.faults());
    assertEquals("The request must be a group of fields.", refusal.detail());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "power_w        | \"10\"",
        "power_w        | true",
        "power_w        | []",
        "power_w        | {}",
        "driver_count   | 1.5",
        "driver_count   | \"2\"",
        "driver_count   | 99999999999",
        "drive          | 1",
        "drive          | \"both\"",
        "drive          | \"EACH\"",
        "drive          | \"\"",
        "drive          | \" each\"",
        "cabin          | 5",
        "cabin          | []",
        "spectrum       | {}",
        "spectrum       | \"100\""
      })
  void aWrongTypeIsToldAtItsPlace(String field, String json) {
    assertEquals(Set.of("/" + field + " wrong-type"), invalid(with(field, json)).faults());
  }

  @ParameterizedTest
  @CsvSource({
    "power_w, 0",
    "power_w, -10",
    "power_w, 1e308",
    "power_w, 1e999",
    "power_w, -1e999",
    "power_w, 50000.000001",
    "power_w, 1e-999",
    "distance_m, 0",
    "distance_m, -0.0",
    "driver_count, 0",
    "driver_count, -1",
    "driver_count, 33",
    "driver_count, 2147483647",
    "spectrum, []",
    "crest_factor_db, -0.001"
  })
  void aValueOutOfBoundsIsToldAtItsPlace(String field, String json) {
    assertEquals(Set.of("/" + field + " not-allowed"), invalid(with(field, json)).faults());
  }

  /** What lacks something in a list that is too long is read by no rule, though only the list is told. */
  @Test
  void rulesStandWhatIsMissingInAListThatIsTooLong() {
    String stage =
        "{\"output_class\":\"class_d\",\"rail_v\":60,\"drop_v\":3,\"load_ohm\":4,"
            + "\"class_d\":{\"full_power_efficiency\":0.88}}";
    String stages = String.join(",", Collections.nCopies(33, stage));
    Response answer =
        given()
            .contentType("application/json")
            .body("{\"supply_v\":13.8,\"channels\":[" + stages + "]}")
            .post("/v1/amplifier-heat");
    assertEquals(422, answer.statusCode());
    assertEquals(List.of("/amplifier", "/channels"), answer.path("errors.pointer"));
  }

  @Test
  void whatIsAllowedIsToldWithTheFault() {
    assertEquals(
        "power_w must be a number from 0.000001 to 50000.",
        invalid(with("power_w", "-1")).detailAt("/power_w"));
    assertEquals(
        "drive must be one of shared, each.",
        invalid(with("drive", "\"both\"")).detailAt("/drive"));
    assertEquals(
        "spectrum must be a list of 1 to 64 entries.",
        invalid(with("spectrum", "[]")).detailAt("/spectrum"));
  }

  @Test
  void aMissingFieldIsToldAsRequired() {
    assertEquals(Set.of("/driver required", " exactly-one-of"), invalid("{}").faults());
    assertEquals(
        Set.of("/driver/sensitivity required"),
        invalid("{\"driver\":{\"rated_ohm\":8,\"sensitivity\":null},\"power_w\":1}").faults());
  }

  @Test
  void anUnknownFieldIsToldWithTheNearestKnown() {
    assertEquals(
        "driver_cuont is not a known field. Did you mean driver_count?",
        invalid(with("driver_cuont", "2")).detailAt("/driver_cuont"));
    assertEquals(
        "driver.sensitivity.base is not a known field. Did you mean basis?",
        invalid(GOOD.replace("basis", "base")).detailAt("/driver/sensitivity/base"));
    assertEquals(
        "power is not a known field. Did you mean power_w?",
        invalid(with("power", "2")).detailAt("/power"));
    assertEquals("colour is not a known field.", invalid(with("colour", "2")).detailAt("/colour"));
  }

  @Test
  void anUnknownFieldWithASlashIsEscapedInItsPointer() {
    assertEquals(Set.of("/a~1b~0c unknown-field"), invalid(with("a/b~c", "1")).faults());
  }

  @Test
  void aDecimalCommaInATextIsRecognised() {
    assertEquals(
        "power_w must be a number from 0.000001 to 50000 with a decimal point, not a comma.",
        invalid(with("power_w", "\"12,5\"")).detail());
  }

  @Test
  void everyFaultIsToldInOneAnswer() {
    Refusal refusal =
        invalid(
            """
            {"driver": {"sensitivity": {"level_db_spl": 900, "bases": "one_watt"}}, "power_w": "50",
             "voltage_v": 1e9, "driver_count": 0, "drive": "both", "cabin": {"gain_cap_db": -1},
             "spectrum": [{"frequency_hz": 1}, 5, null], "colour": "red"}
            """);
    assertEquals(
        Set.of(
            " exactly-one-of",
            "/cabin/gain_cap_db not-allowed",
            "/cabin/length_m required",
            "/colour unknown-field",
            "/drive wrong-type",
            "/driver_count not-allowed",
            "/power_w wrong-type",
            "/driver/rated_ohm required",
            "/driver/sensitivity/bases unknown-field",
            "/driver/sensitivity/basis required",
            "/driver/sensitivity/level_db_spl not-allowed",
            "/spectrum/0/frequency_hz not-allowed",
            "/spectrum/0/level_db required",
            "/spectrum/1 wrong-type",
            "/spectrum/2 required",
            "/voltage_v not-allowed"),
        refusal.faults());
    assertTrue(refusal.detail().startsWith("16 faults; the first: "), refusal.detail());
  }

  @Test
  void noMoreThanAHundredFaultsAreListed() {
    StringBuilder body = new StringBuilder("{\"power_w\":8");
    for (int i = 0; i < 500; i++) {
      body.append(",\"colour").append(i).append("\":1");
    }
    assertEquals(100, invalid(body.append('}').toString()).problem().get("errors").size());
  }

  @Test
  void aRuleBetweenFieldsIsToldWithItsCode() {
    assertEquals(Set.of(" exactly-one-of"), invalid(with("voltage_v", "5")).faults());
    assertEquals(
        Set.of("/addition several-drivers-undecided", "/drive several-drivers-undecided"),
        invalid(with("driver_count", "2")).faults());
  }
}
