package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;
import org.footwell.vehicle.questions.PlansUnderTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Single questions that are put to a plan. */
@ExtendWith(RunningServer.class)
class OfPlanTest {

  private static final String BOX = "/v1/closed-box/of-plan";
  private static final String SUB = BOX + "?about=/drivers/sub_left";

  private static Response post(String address, JsonNode plan) {
    return given().contentType("application/json").body(plan.toString()).post(address);
  }

  private static JsonNode answer(String address, JsonNode plan) {
    Response response = post(address, plan);
    assertEquals(200, response.statusCode(), response::asString);
    return Example.read(response.asString());
  }

  private static boolean canBeAsked(Calculation<?, ?> calculation) {
    return !Calculations.PLAN.places(calculation).isEmpty();
  }

  static Stream<String> asked() {
    return Calculations.all().stream()
        .filter(OfPlanTest::canBeAsked)
        .map(calculation -> calculation.card().id());
  }

  static Stream<String> notAsked() {
    return Calculations.all().stream()
        .filter(calculation -> !canBeAsked(calculation))
        .map(calculation -> calculation.card().id());
  }

  @Test
  void itsAnswerIsThatOfTheRequestBesideIt() {
    JsonNode ofPlan = answer(SUB, PlansUnderTest.demo());
    JsonNode alone = answer("/v1/closed-box", ofPlan.get("request"));
    assertEquals(18, ofPlan.at("/request/box/volume_l").asDouble());
    for (String same : new String[] {"result", "verdict", "safety"}) {
      assertEquals(alone.get(same), ofPlan.get(same));
    }
    assertFalse(alone.has("request"));
  }

  @Test
  void aPlaceIsNamedByIdsOrByIndexes() {
    JsonNode byId = answer(SUB, PlansUnderTest.demo());
    assertEquals(byId, answer(BOX + "?about=/drivers/7", PlansUnderTest.demo()));
    assertEquals(byId, answer(BOX + "?about=%2Fdrivers%2Fsub_left", PlansUnderTest.demo()));
  }

  @Test
  void whatIsAboutThePlanAsAWholeNeedsNoPlace() {
    JsonNode plain = answer("/v1/seat-delays/of-plan", PlansUnderTest.demo());
    assertEquals(6, plain.at("/request/channels").size());
  }

  @Test
  void findingsPointIntoThePlan() {
    ObjectNode plan = PlansUnderTest.demo();
    ((ObjectNode) plan.at("/drivers/7/enclosure/closed")).put("volume_l", 4);
    JsonNode finding = answer(SUB, plan).at("/findings/0");
    assertEquals("/drivers/7/enclosure/closed/volume_l", finding.get("pointer").asText());
    assertEquals("sub_left", finding.get("subject").asText());
  }

  @Test
  void everythingThatThePlanLacksIsToldAtOnce() {
    ObjectNode plan = PlansUnderTest.demo();
    ObjectNode driver = (ObjectNode) plan.at("/new_parts/4/driver");
    driver.remove("vas_l");
    driver.remove("qes");
    driver.remove("sd_cm2");
    assertEquals(
        Set.of(
            "/new_parts/4/driver/qes required",
            "/new_parts/4/driver/sd_cm2 required",
            "/new_parts/4/driver/vas_l required"),
        Refusal.of(post(SUB, plan), 422).faults());
  }

  @Test
  void aDriverWithoutABoxHasNoQuestionOfOne() {
    assertEquals(
        Set.of("/drivers/0/enclosure required"),
        Refusal.of(post(BOX + "?about=/drivers/0", PlansUnderTest.demo()), 422).faults());
  }

  @Test
  void aPlaceThatIsNotThereIsToldWithTheNearest() {
    Refusal misspelt =
        Refusal.of(post(BOX + "?about=/drivers/sub_leff", PlansUnderTest.demo()), 422);
    assertEquals(Set.of("/about dangling-reference"), misspelt.faults());
    assertEquals(
        "/drivers/sub_leff is none of /drivers/{id}. Did you mean /drivers/sub_left?",
        misspelt.detail());
    Refusal otherKind = Refusal.of(post(BOX + "?about=/channels/bass", PlansUnderTest.demo()), 422);
    assertTrue(otherKind.detail().startsWith("/channels/bass is none of /drivers/{id}."));
    assertEquals(
        Set.of("/about required"), Refusal.of(post(BOX, PlansUnderTest.demo()), 422).faults());
    assertEquals(
        Set.of("/about not-allowed"),
        Refusal.of(post("/v1/seat-delays/of-plan?about=/seats/driver", PlansUnderTest.demo()), 422)
            .faults());
  }

  @Test
  void aBodyThatIsNoPlanIsRefused() {
    Refusal.of(given().contentType("application/json").body("{").post(SUB), 400);
    Refusal.of(given().contentType("application/json").body("").post(SUB), 400);
    Refusal.of(given().contentType("text/csv").body("a,b").post(SUB), 415);
    Set<String> faults = Refusal.of(post(SUB, Example.read("{\"vehicul\": 1}")), 422).faults();
    assertTrue(faults.contains("/vehicul unknown-field"), faults::toString);
    assertTrue(faults.contains("/vehicle required"), faults::toString);
  }

  @Test
  void aPlanThatDoesNotHangTogetherIsRefused() {
    ObjectNode plan = PlansUnderTest.demo();
    ((ObjectNode) plan.at("/channels/0")).putArray("outputs").add("out_9");
    ((ObjectNode) plan.at("/channels/5")).put("network", "sub_left.1 + sub_left.3");
    assertEquals(
        Set.of("/channels/0/outputs/0 dangling-reference", "/channels/5/network coil-not-there"),
        Refusal.of(post(SUB, plan), 422).faults());
  }

  @ParameterizedTest
  @MethodSource("notAsked")
  void whatCannotBePutToAPlanIsNotThere(String id) {
    String address = "/v1/" + id + "/of-plan";
    Refusal refusal = Refusal.of(post(address, PlansUnderTest.demo()), 404);
    assertTrue(refusal.detail().startsWith(id + " cannot be put to a plan"), refusal::detail);
    assertTrue(ContractDocument.built().path(address).isMissingNode());
  }

  @Test
  void neitherIsAnUnknownCalculation() {
    Refusal.of(post("/v1/closed-bax/of-plan", PlansUnderTest.demo()), 404);
  }

  @ParameterizedTest
  @MethodSource("asked")
  void takesPlansByPostOnly(String id) {
    String address = "/v1/" + id + "/of-plan";
    given().options(address).then().statusCode(204).header("Allow", equalTo("POST, OPTIONS"));
    given().get(address).then().statusCode(405).header("Allow", equalTo("POST, OPTIONS"));
  }

  @ParameterizedTest
  @MethodSource("asked")
  void theContractHasOnePlanForAll(String id) {
    JsonNode post = ContractDocument.built().path("/v1/" + id + "/of-plan").path("post");
    JsonNode content = post.at("/requestBody/content/application~1json/schema");
    assertEquals(ContractDocument.built().reference("VehiclePlan"), content);
    JsonNode answer =
        ContractDocument.built()
            .resolved(post.at("/responses/200/content/application~1json/schema"))
            .get("properties");
    JsonNode plain = ContractDocument.built().path("/v1/" + id).path("post");
    assertEquals(plain.at("/requestBody/content/application~1json/schema"), answer.get("request"));
    assertTrue(answer.has("result"), answer::toString);
  }

  @ParameterizedTest
  @ValueSource(strings = {"text", "csv", "xml"})
  void answersInOtherFormatsToo(String format) {
    post(SUB + "&format=" + format, PlansUnderTest.demo())
        .then()
        .statusCode(200)
        .body(containsString("52.5"));
  }

  @Test
  void workingsFieldsAndErrorsAreAsEverywhere() {
    assertFalse(answer(SUB + "&workings=true", PlansUnderTest.demo()).get("workings").isEmpty());
    post(SUB + "&field=fc_hz", PlansUnderTest.demo()).then().body(startsWith("52.5"));
    post(SUB + "&field=request.power_w", PlansUnderTest.demo()).then().statusCode(200);
    post(BOX + "?about=/drivers/0&errors=text", PlansUnderTest.demo())
        .then()
        .statusCode(200)
        .body(equalTo("drivers.0.enclosure is required."));
    Refusal misspelt = Refusal.of(post(BOX + "?abuot=1", PlansUnderTest.demo()), 422);
    assertTrue(misspelt.detail().endsWith("Did you mean about?"), misspelt::detail);
  }

  @Test
  void isCountedAsAnOperationOfItsOwn() {
    answer(SUB, PlansUnderTest.demo());
    given()
        .get("/metrics")
        .then()
        .body(containsString("calculation=\"closed-box\",operation=\"of-plan\",status=\"200\""));
  }

  @Test
  void everyAddressOfTheListIsAnswered() {
    JsonNode questions =
        answer("/v1/plan-questions", PlansUnderTest.demo()).at("/result/questions");
    Set<String> calculations = new TreeSet<>();
    for (JsonNode question : questions) {
      if (calculations.add(question.get("calculation").asText())) {
        post(question.get("address").asText(), PlansUnderTest.demo())
            .then()
            .statusCode(question.get("answerable").asBoolean() ? 200 : 422);
      }
    }
    assertTrue(calculations.size() > 10, calculations::toString);
  }
}
