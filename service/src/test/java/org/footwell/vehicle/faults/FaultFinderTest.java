package org.footwell.vehicle.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.DeadlinePassed;
import org.footwell.calculation.Engine;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.ModelledPlans;
import org.footwell.vehicle.faults.FaultFinderResult.Explanation;
import org.footwell.vehicle.faults.FaultFinderResult.NextMeasurement;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.Test;

/** Two doors and a subwoofer of two voice coils in parallel, measured. */
class FaultFinderTest {

  private static final Path PLAN =
      Path.of("src/main/resources/org/footwell/vehicle/faults/example.json");

  /** Levels and a resistance as the plan has them, in dB SPL and ohm. */
  private static final double DOOR_DB = 102.78;

  private static final double BASS_DB = 97.05;
  private static final double BASS_OHM = 3.2;

  private static ObjectNode plan() {
    try {
      ObjectNode plan = (ObjectNode) Trees.MAPPER.readTree(Files.readString(PLAN));
      plan.putArray("measured");
      return plan;
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static ObjectNode row(ObjectNode plan, String channel, double level) {
    return ((ArrayNode) plan.get("measured"))
        .addObject()
        .put("channel", channel)
        .put("level_db_spl", level);
  }

  private static ObjectNode doors(ObjectNode plan) {
    row(plan, "left", DOOR_DB + 0.4).put("meter_ohm", 3.4).put("polarity", 1);
    row(plan, "right", DOOR_DB - 0.5).put("meter_ohm", 3.25).put("polarity", 1);
    return plan;
  }

  private static Answer<FaultFinderResult> answer(ObjectNode plan) {
    return Answers.of(new FaultFinder(), ModelledPlans.plan(plan));
  }

  private static Explanation first(ObjectNode plan) {
    return answer(plan).result().explanations().get(0);
  }

  @Test
  void nothingIsWrongWhereAllIsAsPlanned() {
    ObjectNode plan = doors(plan());
    row(plan, "bass", BASS_DB + 0.7).put("meter_ohm", BASS_OHM).put("polarity", 1);
    Answer<FaultFinderResult> answer = answer(plan);
    assertEquals(List.of(), answer.result().explanations().get(0).faults());
    assertTrue(answer.result().soundConfidence() > 0.9);
    assertTrue(answer.result().fits());
    assertFalse(Answers.codes(answer).contains("fault-found"));
  }

  @Test
  void oneCoilOfTwoThatIsOpenIsFoundAndWhichOfThemIsNot() {
    ObjectNode plan = doors(plan());
    row(plan, "bass", BASS_DB - 2).put("meter_ohm", 2 * BASS_OHM);
    Answer<FaultFinderResult> answer = answer(plan);
    Explanation first = answer.result().explanations().get(0);
    assertEquals(FaultKind.COIL_OPEN, first.faults().get(0).fault());
    assertEquals("sub.1", first.faults().get(0).driver());
    assertEquals("sub.2", first.alike().get(0).faults().get(0).driver());
    assertEquals(1, first.alike().size());
    assertTrue(first.confidence() >= 0.9);
    assertTrue(Answers.codes(answer).containsAll(List.of("fault-found", "faults-alike")));
  }

  @Test
  void coilsInSeriesInsteadOfInParallelHaveFourTimesTheResistance() {
    ObjectNode plan = doors(plan());
    row(plan, "bass", BASS_DB - 6).put("meter_ohm", 4 * BASS_OHM);
    Explanation first = first(plan);
    assertEquals(FaultKind.WIRED_OTHERWISE, first.faults().get(0).fault());
    assertEquals("sub.1 + sub.2", first.faults().get(0).wiredAs());
    assertTrue(first.confidence() >= 0.9);
  }

  @Test
  void aMeterTellsAShortFromAGain() {
    ObjectNode plan = doors(plan());
    row(plan, "bass", 45);
    List<NextMeasurement> next = answer(plan).result().measureNext();
    assertTrue(next.stream().anyMatch(one -> one.measure() == FigureKind.METER), next::toString);
    assertTrue(next.stream().allMatch(one -> one.channel().equals("bass")), next::toString);
    assertFalse(next.get(0).again());
    ObjectNode shorted = doors(plan());
    row(shorted, "bass", 45).put("meter_ohm", 0.1);
    assertEquals(FaultKind.COIL_SHORTED, first(shorted).faults().get(0).fault());
    ObjectNode turnedDown = doors(plan());
    row(turnedDown, "bass", BASS_DB - 12).put("meter_ohm", BASS_OHM);
    FaultLine gain = first(turnedDown).faults().get(0);
    assertEquals(FaultKind.GAIN_OFF, gain.fault());
    assertEquals(-12, gain.gainDb(), 0.1);
  }

  @Test
  void twoFaultsAreFoundTogether() {
    ObjectNode plan = plan();
    row(plan, "left", DOOR_DB).put("meter_ohm", 3.3).put("polarity", -1);
    row(plan, "right", DOOR_DB).put("meter_ohm", 3.3).put("polarity", 1);
    row(plan, "bass", BASS_DB - 6).put("meter_ohm", 4 * BASS_OHM);
    List<FaultKind> kinds = first(plan).faults().stream().map(FaultLine::fault).sorted().toList();
    assertEquals(List.of(FaultKind.POLARITY_INVERTED, FaultKind.WIRED_OTHERWISE), kinds);
  }

  @Test
  void aBadJointIsToldByTheTwoVoltages() {
    ObjectNode plan = doors(plan());
    plan.putArray("measured_supply")
        .addObject()
        .put("amplifier", "main")
        .put("at_battery_v", 13.8)
        .put("at_amplifier_v", 12.9);
    FaultLine joint = first(plan).faults().get(0);
    assertEquals(FaultKind.GROUND_RESISTANCE, joint.fault());
    assertEquals("main", joint.amplifier());
    double amperes = 0.9 / (joint.jointOhm() + 0.0054);
    // What it draws: idle and programme, by Ohm's law a few amperes.
    assertTrue(amperes > 1 && amperes < 10, () -> "drawn " + amperes);
  }

  @Test
  void whatNoFaultExplainsIsSaid() {
    ObjectNode plan = plan();
    row(plan, "left", 90).put("meter_ohm", 1.6);
    row(plan, "right", 115).put("meter_ohm", 7);
    Answer<FaultFinderResult> answer = answer(plan);
    assertFalse(answer.result().fits());
    assertTrue(answer.result().fitProbability() < 0.001);
    assertTrue(Answers.codes(answer).contains("nothing-fits"));
    assertFalse(Answers.codes(answer).contains("fault-found"));
  }

  @Test
  void confidencesAddUpToOne() {
    ObjectNode plan = plan();
    row(plan, "left", DOOR_DB - 3);
    row(plan, "bass", BASS_DB - 3);
    FaultFinderResult result = answer(plan).result();
    double sum = result.explanations().stream().mapToDouble(Explanation::confidence).sum();
    assertEquals(1, sum + result.unlistedConfidence(), 1e-12);
    assertTrue(result.explanations().size() > 2);
  }

  @Test
  void smallerErrorsMakeSurer() {
    ObjectNode plan = plan();
    row(plan, "left", DOOR_DB);
    row(plan, "right", DOOR_DB - 4);
    double usual = first(plan).faults().isEmpty() ? 0 : first(plan).confidence();
    plan.putObject("measuring_errors").put("level_error_db", 0.5);
    assertEquals(FaultKind.GAIN_OFF, first(plan).faults().get(0).fault());
    assertTrue(first(plan).confidence() > usual);
  }

  @Test
  void aPlanOfWhichNothingWasMeasuredIsRefused() {
    List<String> places =
        Answers.faults(new FaultFinder(), ModelledPlans.plan(plan())).stream()
            .map(fault -> fault.code() + " " + fault.pointer())
            .toList();
    assertEquals(List.of("required /measured"), places);
  }

  @Test
  void itStopsAtItsDeadline() {
    ObjectNode json = doors(plan());
    VehiclePlan plan = ModelledPlans.plan(json);
    assertThrows(
        DeadlinePassed.class,
        () -> new Engine().answer(new FaultFinder(), plan, false, Duration.ofNanos(1)));
  }
}
