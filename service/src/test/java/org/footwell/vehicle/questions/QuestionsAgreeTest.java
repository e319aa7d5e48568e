package org.footwell.vehicle.questions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.footwell.Answers;
import org.footwell.Calculations;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.PlanReview;
import org.footwell.vehicle.PlanReviewResult;
import org.footwell.vehicle.PlanReviewResult.CableLine;
import org.footwell.vehicle.PlanReviewResult.ChannelLine;
import org.footwell.web.request.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The review and the single questions put to the same plan say the same where they say one thing. */
class QuestionsAgreeTest {

  private static final Engine ENGINE = new Engine();
  private static final double SAME = 1e-9;

  private static VehiclePlan plan(JsonNode json) {
    return ENGINE.bind(VehiclePlan.class, Json.MAPPER.convertValue(json, Object.class), false);
  }

  private static JsonNode read(String path) throws IOException {
    return Json.MAPPER.readTree(Files.readString(Path.of(path)));
  }

  private static JsonNode ask(String calculation, String about, VehiclePlan plan) {
    return result(Calculations.BY_ID.get(calculation).get(), about, plan);
  }

  private static <Q extends Record, R extends Record> JsonNode result(
      Calculation<Q, R> calculation, String about, VehiclePlan plan) {
    Answer<R> answer =
        ENGINE.answer(
            calculation,
            new PlanDocument(),
            plan,
            about,
            false,
            Duration.ofSeconds(30),
            Reader.ANYONE);
    return Json.MAPPER.valueToTree(answer.result());
  }

  private static PlanReviewResult review(VehiclePlan plan) {
    return Answers.of(new PlanReview(), plan).result();
  }

  @ParameterizedTest
  @ValueSource(strings = {"camper-van", "low-budget-hatchback", "factory-estate"})
  void loadsAreThoseOfWiringLoad(String name) throws IOException {
    VehiclePlan plan = plan(read("../docs/examples/" + name + ".json"));
    for (ChannelLine line : review(plan).channels()) {
      JsonNode wiring = ask("wiring-load", "/channels/" + line.id(), plan);
      assertEquals(wiring.get("load_ohm").asDouble(), line.loadOhm(), SAME, line.id());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"camper-van", "factory-estate"})
  void cablesAreThoseOfSupplyCable(String name) throws IOException {
    VehiclePlan plan = plan(read("../docs/examples/" + name + ".json"));
    for (CableLine line : review(plan).cables()) {
      JsonNode cable = ask("supply-cable", "/amplifiers/" + line.id(), plan).get("metric");
      assertEquals(cable.get("area_mm2").asDouble(), line.areaMm2(), SAME, line.id());
      assertEquals(cable.get("loop_ohm").asDouble(), line.loopOhm(), SAME, line.id());
      assertEquals(cable.get("ampacity_a").asDouble(), line.ampacityA(), SAME, line.id());
    }
  }

  @Test
  void flightTimesAreThoseOfSeatDelays() throws IOException {
    ObjectNode json =
        (ObjectNode) read("src/test/resources/codes/plan-review/crossover-cancels.json");
    VehiclePlan plan = plan(json);
    PlanReviewResult review = review(plan);
    JsonNode channels = ask("seat-delays", "", plan).get("channels");
    for (int c = 0; c < channels.size(); c++) {
      assertEquals(
          channels.get(c).get("flight_delay_ms").asDouble(),
          review.channels().get(c).flightDelayMs(),
          SAME);
    }
  }

  @Test
  void theLowestLoadOfASingleDriverIsThatOfItsImpedanceCurve() throws IOException {
    VehiclePlan plan = plan(read("../docs/examples/camper-van.json"));
    double lowest =
        ask("impedance-curve", "/drivers/rear_left_coaxial", plan)
            .get("lowest_modulus_ohm")
            .asDouble();
    double reviewed =
        review(plan).channels().stream()
            .filter(line -> line.id().equals("rear_left"))
            .findFirst()
            .orElseThrow()
            .lowestOhm();
    // Both look between two frequencies of their own grid: to where a curve is flat in its dip.
    assertEquals(lowest, reviewed, 1e-7 * lowest);
  }
}
