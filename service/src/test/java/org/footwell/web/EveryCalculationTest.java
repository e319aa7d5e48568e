package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every calculation of the list must do, whatever it computes. */
@ExtendWith(RunningServer.class)
@Tag("long")
class EveryCalculationTest {

  private static String[] firstNumber(JsonNode answer) {
    Map<String, String> cells = new LinkedHashMap<>();
    Example.flatten("", answer.get("result"), cells);
    return cells.entrySet().stream()
        .filter(cell -> pointed(answer.get("result"), cell.getKey()).isNumber())
        .map(cell -> new String[] {cell.getKey(), cell.getValue()})
        .findFirst()
        .orElseThrow();
  }

  private static JsonNode pointed(JsonNode node, String dotted) {
    return node.at("/" + dotted.replace('.', '/'));
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void answersItsWorkedExample(Example example) {
    JsonNode answer = example.answer();
    assertFalse(answer.get("result").isEmpty());
    String worst =
        answer.get("findings").isEmpty() ? "ok" : answer.at("/findings/0/level").asText();
    assertEquals(worst, answer.get("verdict").asText());
    assertFalse(answer.has("workings"));
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#flat")
  void answersTheSameByGet(Example example) {
    String byGet = given().get(example.address()).then().statusCode(200).extract().asString();
    assertEquals(example.answer(), Example.read(byGet));
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#flat")
  void answersHeadWithTheHeadersOfGet(Example example) {
    Response get = given().get(example.address());
    Response head = given().head(example.address());
    assertEquals(get.statusCode(), head.statusCode());
    for (String name :
        List.of(
            "Content-Type",
            "Content-Length",
            "ETag",
            "Cache-Control",
            "Vary",
            "Footwell-Verdict")) {
      assertEquals(get.header(name), head.header(name), name);
    }
    assertEquals("", head.asString());
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#flat")
  void saysWhichMethodsItTakes(Example example) {
    String allow = "GET, HEAD, POST, OPTIONS";
    given().options(example.path()).then().statusCode(204).header("Allow", equalTo(allow));
    for (String method : List.of("PUT", "PATCH", "DELETE")) {
      given()
          .request(method, example.path())
          .then()
          .statusCode(405)
          .header("Allow", equalTo(allow));
    }
  }

  @ParameterizedTest(allowZeroInvocations = true)
  @MethodSource("org.footwell.web.Example#notFlat")
  void takesNoGetWhenItsRequestIsNotFlat(Example example) {
    String allow = "POST, OPTIONS";
    given().options(example.path()).then().statusCode(204).header("Allow", equalTo(allow));
    given().get(example.path()).then().statusCode(405).header("Allow", equalTo(allow));
    given().head(example.path()).then().statusCode(405).header("Allow", equalTo(allow));
    assertTrue(ContractDocument.built().path(example.path()).path("get").isMissingNode());
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void showsItsWorkingsWithoutChangingTheResult(Example example) {
    Response response = example.post("?workings=true");
    JsonNode withWorkings = Example.read(response.asString());
    JsonNode steps = withWorkings.get("workings");
    assertFalse(steps.isEmpty());
    for (JsonNode step : steps) {
      assertFalse(step.path("quantity").asText().isBlank(), step::toString);
      assertFalse(step.path("formula").asText().isBlank(), step::toString);
      assertTrue(step.path("inputs").isObject(), step::toString);
      assertTrue(step.path("value").isNumber(), step::toString);
      assertTrue(step.path("unit").isTextual(), step::toString);
      assertFalse(step.path("source").asText().isBlank(), step::toString);
    }
    ((ObjectNode) withWorkings).remove("workings");
    assertEquals(example.answer(), withWorkings);
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void answersInTextCsvAndXml(Example example) {
    JsonNode answer = example.answer();
    String verdict = answer.get("verdict").asText();
    example
        .post("?format=text")
        .then()
        .header("Content-Type", equalTo("text/plain;charset=utf-8"))
        .header("Footwell-Verdict", equalTo(verdict))
        .body(startsWith("verdict: " + verdict + "\n"));
    Response csv = example.post("?format=csv");
    assertEquals("text/csv;charset=utf-8", csv.contentType());
    String[] number = firstNumber(answer);
    assertEquals(number[1], Table.of(csv.asString()).row(0).get(number[0]));
    assertEquals(verdict, Table.of(csv.asString()).row(0).get("verdict"));
    example
        .post("?format=xml")
        .then()
        .header("Content-Type", equalTo("application/xml"))
        .body("answer.verdict", equalTo(verdict));
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void givesASingleValueWithNothingAroundIt(Example example) {
    String[] number = firstNumber(example.answer());
    Response value = example.post("?field=" + number[0]);
    assertEquals("text/plain;charset=utf-8", value.contentType());
    assertEquals(Double.parseDouble(number[1]), Double.parseDouble(value.asString()), number[0]);
    assertTrue(value.asString().matches("-?[0-9.]+(E-?[0-9]+)?"), value::asString);
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void givesItsVerdictAndTheCodesOfItsFindingsAsValues(Example example) {
    JsonNode answer = example.answer();
    List<String> codes = answer.get("findings").findValuesAsText("code");
    assertEquals(answer.get("verdict").asText(), example.post("?field=verdict").asString());
    example
        .post("?field=findings.code")
        .then()
        .statusCode(200)
        .body(equalTo(String.join("; ", codes)));
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void tellsTheNearestNameForAMisspeltField(Example example) {
    String first = example.question().fieldNames().next();
    String wrong = example.question().toString().replaceFirst(first, first + "x");
    given()
        .contentType("application/json")
        .body(wrong)
        .post(example.path())
        .then()
        .statusCode(422)
        .body("errors[0].pointer", equalTo("/" + first + "x"))
        .body("errors[0].detail", endsWith("Did you mean " + first + "?"));
  }
}
