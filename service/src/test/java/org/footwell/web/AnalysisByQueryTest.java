package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What can be asked of a calculation as a whole fits into a query where its request does. */
@ExtendWith(RunningServer.class)
class AnalysisByQueryTest {

  private static final String LEVEL = "/v1/sound-level";

  /** 90 dB at 1 W and 1 m. */
  private static final String DRIVER =
      "request.driver.rated_ohm=4&request.driver.sensitivity.level_db_spl=90"
          + "&request.driver.sensitivity.basis=one_watt";

  private static final String FOR_100_DB =
      "&input=power_w&from=0.1&to=100&output=level_db_spl&target=100";

  private static Response get(String path) {
    return given().get(path);
  }

  /** Numbers, truth values, money, names and lists of an example are what they are in JSON. */
  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#flat")
  void aQueryIsAnsweredAsTheSameInJson(Example example) {
    String input =
        example.cells().keySet().stream()
            .filter(path -> example.question().at("/" + path.replace('.', '/')).isNumber())
            .findFirst()
            .orElseThrow();
    String output = number(example);
    double given = example.question().at("/" + input.replace('.', '/')).asDouble();
    double from = given - 0.25;
    double to = given + 0.25;
    ObjectNode asked = JsonNodeFactory.instance.objectNode();
    asked.set("request", example.question());
    asked.put("input", input).put("output", output).put("from", from).put("to", to);
    asked.put("target", 1.0);
    String within = ("&" + example.query()).replace("&", "&request.");
    String question =
        "input=%s&output=%s&from=%s&to=%s&target=1".formatted(input, output, from, to);
    Response byQuery = get(example.path() + "/solve?" + question + within);
    Response byJson =
        given()
            .contentType("application/json")
            .body(asked.toString())
            .post(example.path() + "/solve");
    assertEquals(byJson.statusCode(), byQuery.statusCode(), byQuery::asString);
    JsonNode answer = withoutRequest(byQuery);
    assertEquals(withoutRequest(byJson), answer);
    assertTrue(
        byQuery.statusCode() == 200 || !answer.toString().contains("wrong-type"), answer::toString);
  }

  /** An answer, or a problem without the id of its request. */
  private static JsonNode withoutRequest(Response response) {
    ObjectNode answer = (ObjectNode) Example.read(response.asString());
    answer.remove("request_id");
    return answer;
  }

  /** The first number that it answers, or a name of none. */
  private static String number(Example example) {
    return example.answer().get("result").properties().stream()
        .filter(one -> one.getValue().isNumber())
        .findFirst()
        .map(Map.Entry::getKey)
        .orElse("no_number");
  }

  @Test
  void aCellHoldsTheValueAlone() {
    Response answer = get(LEVEL + "/solve?" + DRIVER + FOR_100_DB + "&field=value");
    answer.then().statusCode(200).header("Footwell-Verdict", equalTo("note"));
    assertTrue(answer.contentType().startsWith("text/plain"));
    // 10·lg(P/1 W) is the level above that of 1 W.
    assertEquals(10, Double.parseDouble(answer.asString()), 1e-9);
  }

  @Test
  void listsOfTheQuestionAndOfItsRequestAreLists() {
    String coils =
        "request.network=A%7C%7CB&request.coils.0.name=A&request.coils.0.rated_ohm=4"
            + "&request.coils.1.name=B&request.coils.1.rated_ohm=8";
    get("/v1/wiring-load/solve?"
            + coils
            + "&input=coils.B.rated_ohm&values.0=2&values.1=4&values.2=8&from=1&to=16&output=load_ohm&target=2"
            + "&field=value")
        .then()
        .statusCode(200)
        .body(equalTo("4.0"));
  }

  @Test
  void theErrorBudgetFitsIntoACellToo() {
    String percent =
        "&request.power_w=10&inputs.0.path=power_w&inputs.0.plus_minus_percent=10"
            + "&inputs.0.distribution=uniform&sample_count=256";
    get(LEVEL + "/tolerance?" + DRIVER + percent + "&outputs.0=driver_power_w&field=outputs.0.mean")
        .then()
        .statusCode(200)
        .body(startsWith("10.0"));
  }

  @Test
  void whatIsKeptIsKnownByItsTag() {
    String address = LEVEL + "/solve?" + DRIVER + FOR_100_DB;
    Response first = get(address);
    String tag = first.header("ETag");
    assertTrue(first.header("Cache-Control").contains("max-age"));
    given().header("If-None-Match", tag).get(address).then().statusCode(304);
    given().head(address).then().statusCode(200);
  }

  @Test
  void aLevelOutOfReachLeavesTheCellEmptyAndSaysStop() {
    String far = FOR_100_DB.replace("target=100", "target=130");
    get(LEVEL + "/solve?" + DRIVER + far + "&field=value")
        .then()
        .statusCode(200)
        .header("Footwell-Verdict", equalTo("stop"))
        .body(equalTo(""));
    get(LEVEL + "/solve?" + DRIVER + far + "&field=findings.0.text")
        .then()
        .body(containsString("does not get to 130"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          request.distance_m=far                  | /request/distance_m | wrong-type
          request.distance_m=1,5                  | /request/distance_m | wrong-type
          request.distance_m=-1                   | /request/distance_m | not-allowed
          request.distanc_m=1                     | /request/distanc_m  | unknown-field
          request.driver.0.re_ohm=4               | /request/driver/0   | unknown-field
          request.driver.sensitivity.basis=watt   | /request/driver/sensitivity/basis | duplicate
          inptu=power_w                           | /inptu              | unknown-field
          step=0                                  | /step               | not-allowed
          series=e13                              | /series             | wrong-type
          """)
  void whatIsWrongIsToldAtItsPlace(String more, String place, String code) {
    Response answer = get(LEVEL + "/solve?" + DRIVER + FOR_100_DB + "&" + more);
    answer.then().statusCode(422);
    List<String> codes = answer.path("errors.code");
    List<String> places = answer.path("errors.pointer");
    assertEquals(List.of(code), codes, answer::asString);
    assertEquals(List.of(place), places);
  }

  @Test
  void everythingThatIsWrongIsToldAtOnce() {
    get(LEVEL + "/solve?request.distance_m=x&input=powr_w&from=2&to=1&output=level&target=100")
        .then()
        .statusCode(422)
        .body("errors.code", contains("not-ascending"));
    get(LEVEL + "/solve?request.distance_m=x&input=powr_w&from=1&to=2&output=level&target=100")
        .then()
        .statusCode(422)
        .body("errors.pointer", containsInAnyOrder("/input", "/output", "/request/distance_m"));
    get(LEVEL + "/solve")
        .then()
        .statusCode(422)
        .body("errors.pointer", contains("/input", "/from", "/to", "/output", "/target"));
    get(LEVEL + "/solve?" + FOR_100_DB.substring(1))
        .then()
        .statusCode(422)
        .body("errors.pointer", contains("/request/driver"));
    get(LEVEL + "/solve?request=5" + FOR_100_DB)
        .then()
        .statusCode(422)
        .body("errors.pointer", contains("/request"));
  }

  @Test
  void aCellThatHidesProblemsGetsThemAsText() {
    get(LEVEL + "/solve?errors=text&" + DRIVER + FOR_100_DB.replace("power_w", "powr_w"))
        .then()
        .statusCode(200)
        .header("Cache-Control", "no-store")
        .body(equalTo("powr_w leads to no single value of the request. Did you mean power_w?"));
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#notFlat")
  void whatIsNotFlatTakesPostOnly(Example example) {
    for (String analysis : List.of("/solve", "/tolerance")) {
      String path = example.path() + analysis;
      given().options(path).then().header("Allow", equalTo("POST, OPTIONS"));
      given().get(path).then().statusCode(405).header("Allow", equalTo("POST, OPTIONS"));
    }
  }
}
