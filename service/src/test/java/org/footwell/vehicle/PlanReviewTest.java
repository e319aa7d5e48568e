package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.impedance.ImpedanceCurve;
import org.footwell.electrical.impedance.ImpedanceCurveRequest;
import org.footwell.electrical.impedance.ImpedanceCurveResult;
import org.footwell.vehicle.PlanReviewResult.AmplifierLine;
import org.footwell.vehicle.PlanReviewResult.ChannelLine;
import org.footwell.web.request.Json;
import org.junit.jupiter.api.Test;

/** The demo plan, and what becomes of it when something in it is changed. */
class PlanReviewTest {

  private static final PlanReview CALCULATION = new PlanReview();

  private static ObjectNode plan() {
    return VehicleDraft.example();
  }

  private static Answer<PlanReviewResult> answer(JsonNode plan) {
    return Answers.of(CALCULATION, VehicleDraft.read(plan));
  }

  private static List<String> faults(JsonNode plan) {
    return Answers.faults(CALCULATION, VehicleDraft.read(plan)).stream()
        .map(fault -> fault.code() + " " + fault.pointer())
        .toList();
  }

  private static ObjectNode at(JsonNode plan, String pointer) {
    return (ObjectNode) plan.at(pointer);
  }

  private static ChannelLine channel(Answer<PlanReviewResult> answer, String id) {
    return answer.result().channels().stream()
        .filter(line -> line.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theBridgedSubwoofersAreFourOhmAndGetThePowerOfTheRails() {
    ChannelLine bass = channel(answer(plan()), "bass");
    assertEquals(4, bass.loadOhm(), 1e-12);
    // 31 V at 14.4 V are 29.708 V at the 13.8 V of the feed; 2·(29.708 − 2.5) V peak behind
    // 2·0.25 ohm into 4 ohm and 2·1.5 m of 4 mm² (4.95 ohm/km):
    double load = 4 + 2 * 1.5 * 4.95 / 1000;
    double peak = 2 * (31 * 13.8 / 14.4 - 2.5) * load / (load + 0.5);
    assertEquals(peak * peak / 2 / load, bass.cleanPowerW(), 1e-6);
    assertEquals(peak, bass.limiterPeakV(), 1e-9);
  }

  @Test
  void theLevelOfTheCentreByHand() {
    // 73.5 W clean at a crest of 12 dB averages 8.99 dB less; 87 dB per watt; + 7.96 dB at 0.4 m.
    ChannelLine centre = channel(answer(plan()), "centre");
    double cable = 2 * 4 * 13.3 / 1000;
    double average = centre.cleanPowerW() * 4 / (4 + cable) * Math.pow(10, (3.0103 - 12) / 10);
    assertEquals(87 + 10 * Math.log10(average) - 20 * Math.log10(0.4), centre.levelDbSpl(), 1e-3);
  }

  @Test
  void aFaultyRatedLoadIsToldOnce() {
    ObjectNode plan = plan();
    at(plan, "/factory_parts/0").put("rated_ohm", 0.01);
    assertEquals(List.of("not-allowed /factory_parts/0/rated_ohm"), faults(plan));
  }

  @Test
  void aPassiveSplitIsJudgedByItsBandsAndLoadsOnce() {
    assertEquals(4, channel(answer(plan()), "front_left").loadOhm(), 1e-12);
    ObjectNode both = plan();
    for (JsonNode driver : both.get("drivers")) {
      ((ObjectNode) driver).remove("band");
    }
    assertEquals(2, channel(answer(both), "front_left").loadOhm(), 1e-12);
  }

  @Test
  void theFarthestChannelWaitsNotAtAllAndNoneIsTrimmedUp() {
    Answer<PlanReviewResult> answer = answer(plan());
    assertEquals(
        0,
        answer.result().channels().stream().mapToDouble(ChannelLine::delayMs).min().orElseThrow(),
        1e-12);
    assertEquals(
        0,
        answer.result().channels().stream().mapToDouble(ChannelLine::trimDb).max().orElseThrow(),
        1e-12);
  }

  @Test
  void massAndPriceAreThoseOfTheNewPartsLessWhatGoesOut() {
    PlanReviewResult result = answer(plan()).result();
    assertEquals(0, new BigDecimal("1600").compareTo(result.price()));
    double in = 2 * 1250 + 2 * 180 + 340 + 2 * 780 + 2 * 5400 + 2900 + 3600;
    assertEquals(in - 2 * 620 - 2 * 410, result.massChangeG(), 1e-9);
  }

  @Test
  void whatIsNotKnownOfEveryPartIsLeftOut() {
    ObjectNode plan = plan();
    at(plan, "/new_parts/2")
        .remove(List.of("price", "mass_g", "sensitivity", "continuous_power_w"));
    Answer<PlanReviewResult> answer = answer(plan);
    assertNull(answer.result().price());
    assertNull(answer.result().massChangeG());
    assertNull(answer.result().levelDbSpl());
    assertNull(channel(answer, "centre").levelDbSpl());
    assertNull(channel(answer, "centre").headroomDb());
    assertTrue(Answers.codes(answer).containsAll(List.of("level-not-known", "headroom-not-known")));
  }

  @Test
  void aLoadBelowTheMinimumStopsThePlanAndPointsToTheOutput() {
    ObjectNode plan = plan();
    plan.at("/amplifiers/1/outputs")
        .forEach(output -> ((ObjectNode) output).put("minimum_bridged_ohm", 5));
    Answer<PlanReviewResult> answer = answer(plan);
    Finding worst = answer.findings().get(0);
    assertEquals(Verdict.STOP, answer.verdict());
    assertEquals("load-below-minimum", worst.code());
    assertEquals("bass", worst.subject());
    assertEquals("/amplifiers/1/outputs/0/minimum_bridged_ohm", worst.pointer());
    assertEquals(Verdict.STOP, channel(answer, "bass").verdict());
    assertTrue(channel(answer, "rear_left").verdict().compareTo(Verdict.STOP) < 0);
  }

  @Test
  void everyDanglingAndDuplicateIdIsToldAtOnceWithItsPlace() {
    ObjectNode plan = plan();
    at(plan, "/drivers/0").put("part", "woofer_61").put("replaces", "nothing");
    at(plan, "/drivers/8").put("id", "sub_left");
    at(plan, "/channels/2").put("amplifier", "mian");
    ((ArrayNode) plan.at("/channels/3/outputs")).set(0, Json.MAPPER.valueToTree("9"));
    at(plan, "/channels/4").put("network", "rear_right_coaxail");
    at(plan, "/crossovers/0").put("lower", "boss");
    assertEquals(
        List.of(
            "duplicate /drivers/8/id",
            "dangling-reference /drivers/0/part",
            "dangling-reference /drivers/0/replaces",
            "dangling-reference /channels/2/amplifier",
            "dangling-reference /channels/3/outputs/0",
            "dangling-reference /channels/4/network",
            "dangling-reference /channels/5/network",
            "dangling-reference /crossovers/0/lower"),
        faults(plan));
  }

  @Test
  void aDanglingIdNamesTheNearestKnownOne() {
    ObjectNode plan = plan();
    at(plan, "/channels/2").put("amplifier", "mian");
    Fault fault = Answers.faults(CALCULATION, VehicleDraft.read(plan)).get(0);
    assertEquals("mian is none of amplifiers. Did you mean main?", fault.detail());
  }

  @Test
  void anOutputOrADriverBelongsToOneChannelOnly() {
    ObjectNode plan = plan();
    ((ArrayNode) plan.at("/channels/1/outputs")).set(0, Json.MAPPER.valueToTree("1"));
    at(plan, "/channels/4").put("network", "rear_left_coaxial");
    assertEquals(
        List.of("output-used-twice /channels/1/outputs/0", "driver-used-twice /channels/4/network"),
        faults(plan));
  }

  @Test
  void theTwoHalvesOfABridgeMustBeAlike() {
    ObjectNode plan = plan();
    at(plan, "/amplifiers/1/outputs/1/rails").put("rail_v", 25);
    assertEquals(List.of("bridge-of-unlike /channels/5/outputs/1"), faults(plan));
  }

  @Test
  void theGainTargetNeverPassesWhatTheDriversBear() {
    ChannelLine centre = channel(answer(plan()), "centre");
    // 30 W into 4 ohm are 10.95 V; 3 dB overlap and a tone at -6 dBFS leave 3 dB less.
    double loaded = centre.limiterRmsV() * Math.pow(10, (3.0 - 6.0) / 20);
    assertEquals(loaded * 4.04 / 4, centre.gainTargetV(), 2e-3);
    assertTrue(centre.gainTargetV() < centre.limiterRmsV());
  }

  @Test
  void trimsBringEveryChannelToTheLevelOfTheQuietest() {
    List<ChannelLine> lines = answer(plan()).result().channels();
    double quietest = lines.stream().mapToDouble(ChannelLine::levelDbSpl).min().orElseThrow();
    for (ChannelLine line : lines) {
      assertEquals(quietest, line.levelDbSpl() + line.trimDb(), 1e-9);
    }
  }

  @Test
  void aBridgeNeedsTwoOutputs() {
    ObjectNode plan = plan();
    ((ArrayNode) plan.at("/channels/5/outputs")).set(1, Json.MAPPER.valueToTree("a"));
    assertEquals(List.of("bridge-of-one /channels/5/outputs/1"), faults(plan));
  }

  @Test
  void faultsOfNestedCalculationsPointIntoThePlan() {
    ObjectNode plan = plan();
    at(plan, "/channels/0").put("network", "front_left_woofer || ");
    at(plan, "/channels/3/high_pass").put("order", 3);
    List<String> faults = faults(plan);
    assertTrue(faults.contains("network-syntax /channels/0/network"), faults::toString);
    assertTrue(
        faults.stream().anyMatch(f -> f.startsWith("linkwitz-riley-odd /channels/3")),
        faults::toString);
  }

  @Test
  void railsThatTheDropEatsUpAreRefusedWhereTheyStand() {
    ObjectNode plan = plan();
    at(plan, "/amplifiers/1/outputs/0/rails").put("drop_v", 31);
    assertEquals(List.of("not-ascending /amplifiers/1/outputs/0/rails/rail_v"), faults(plan));
  }

  @Test
  void unevenChannelsOfOneRoleAndUnevenBandsAreRemarked() {
    ObjectNode plan = plan();
    at(plan, "/new_parts/1/sensitivity").put("level_db_spl", 98);
    at(plan, "/channels/3").put("role", "front");
    at(plan, "/new_parts/3/sensitivity").put("level_db_spl", 80);
    List<String> codes = Answers.codes(answer(plan));
    assertTrue(codes.containsAll(List.of("bands-uneven", "role-uneven")), codes::toString);
  }

  @Test
  void whatIsOnNoChannelIsRemarked() {
    ObjectNode plan = plan();
    ((ArrayNode) plan.get("channels")).remove(2);
    ((ArrayNode) plan.get("new_parts")).add(at(plan, "/new_parts/0").deepCopy().put("id", "spare"));
    List<String> codes = Answers.codes(answer(plan));
    assertTrue(
        codes.containsAll(List.of("driver-not-connected", "part-not-used")), codes::toString);
  }

  @Test
  void withoutAProgrammeTheLevelIsThatOfASine() {
    ObjectNode plan = plan();
    double music = channel(answer(plan), "bass").levelDbSpl();
    plan.remove("programme");
    Answer<PlanReviewResult> answer = answer(plan);
    assertEquals(12 - 3.0103, channel(answer, "bass").levelDbSpl() - music, 1e-4);
    assertNull(answer.result().levelDba());
    assertTrue(Answers.codes(answer).contains("exposure-unknown"));
  }

  @Test
  void workingsSayWhichChannelTheyBelongTo() {
    Answer<PlanReviewResult> answer = Answers.withWorkings(CALCULATION, VehicleDraft.read(plan()));
    assertTrue(answer.workings().stream().anyMatch(step -> "/channels/5".equals(step.pointer())));
    assertEquals(answer(plan()).result(), answer.result());
  }

  @Test
  void theLowestLoadIsThatOfTheDriverDataScaledToTheNetwork() {
    ImpedanceCurveResult curve =
        Answers.of(
                new ImpedanceCurve(),
                new ImpedanceCurveRequest(
                    VehicleDraft.read(plan()).newParts().get(4).impedance(), null, null))
            .result();
    // Four equal coils in series-parallel are as one coil.
    assertEquals(curve.lowestModulusOhm(), channel(answer(plan()), "bass").lowestOhm(), 1e-9);
  }

  @Test
  void theGainTargetIsTheCleanVoltageLessToneAndOverlap() {
    // Everything can be set: the amplifier clips 3 dB before full scale, the tone is at -6 dBFS,
    // so 3 dB below the clean voltage; open, the damping of 0.06 ohm against 4 ohm is missing.
    ChannelLine bass = channel(answer(plan()), "bass");
    double clean = bass.limiterPeakV() / Math.sqrt(2);
    double loaded = clean * Math.pow(10, (3.0 - 6.0) / 20);
    assertEquals(loaded * (4 + 0.03) / 4, bass.gainTargetV(), 2e-3);
  }

  @Test
  void anAmplifierIsFedByACableThatCarriesItsCurrentAndAFuseAboveIt() {
    for (AmplifierLine line : answer(plan()).result().amplifiers()) {
      assertTrue(line.fuseA() * 0.8 >= line.currentA(), line::toString);
      assertTrue(line.dropV() <= 0.5, line::toString);
    }
  }

  @Test
  void aFeedThatIsTooLongForAnySizeStopsThePlan() {
    ObjectNode plan = plan();
    at(plan, "/amplifiers/0/feed").put("permitted_drop_v", 0.001);
    Answer<PlanReviewResult> answer = answer(plan);
    assertEquals("no-size-fits", answer.findings().get(0).code());
    assertEquals("main", answer.findings().get(0).subject());
    assertNull(answer.result().amplifiers().get(0).cableMm2());
  }

  @Test
  void withoutDrawFeedSignalAndDriverDataThePlanIsReviewedAllTheSame() {
    ObjectNode plan = plan();
    plan.remove("signal");
    plan.get("amplifiers").forEach(a -> ((ObjectNode) a).remove(List.of("draw", "feed")));
    plan.get("new_parts").forEach(part -> ((ObjectNode) part).remove("impedance"));
    plan.get("drivers").forEach(driver -> ((ObjectNode) driver).remove("enclosure"));
    Answer<PlanReviewResult> answer = answer(plan);
    assertNull(answer.result().amplifiers());
    assertNull(channel(answer, "bass").lowestOhm());
    assertNull(channel(answer, "bass").gainTargetV());
  }
}
