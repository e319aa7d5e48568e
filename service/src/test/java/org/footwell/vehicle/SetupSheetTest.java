package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.crossover.HighReason;
import org.footwell.acoustic.level.SoundLevelResult;
import org.footwell.calculation.Answer;
import org.footwell.physics.Piston;
import org.footwell.vehicle.PlanReviewResult.ChannelLine;
import org.footwell.vehicle.PlanReviewResult.CrossoverLine;
import org.footwell.vehicle.PlanReviewResult.MeasuredLine;
import org.footwell.vehicle.PlanReviewResult.SetupLine;
import org.footwell.web.request.Json;
import org.junit.jupiter.api.Test;

/** What is set on the demo plan, where its crossovers may lie, and what was measured of it. */
class SetupSheetTest {

  private static final PlanReview CALCULATION = new PlanReview();

  private static ObjectNode plan() {
    return VehicleDraft.example();
  }

  private static Answer<PlanReviewResult> answer(ObjectNode plan) {
    return Answers.of(CALCULATION, VehicleDraft.read(plan));
  }

  private static SetupLine sheet(Answer<PlanReviewResult> answer, String id) {
    return answer.result().setupSheet().stream()
        .filter(line -> line.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static ObjectNode part(ObjectNode plan, String id) {
    for (var part : plan.get("new_parts")) {
      if (part.get("id").asText().equals(id)) {
        return (ObjectNode) part;
      }
    }
    throw new IllegalArgumentException(id);
  }

  private static List<String> about(Answer<?> answer, String pointer) {
    return answer.findings().stream()
        .filter(finding -> finding.pointer().startsWith(pointer))
        .map(finding -> finding.code() + " " + finding.pointer())
        .toList();
  }

  @Test
  void everySettingOfAChannelIsInItsLine() {
    Answer<PlanReviewResult> answer = answer(plan());
    SetupLine centre = sheet(answer, "centre");
    ChannelLine line = answer.result().channels().get(2);
    assertEquals("main", centre.amplifier());
    assertEquals(List.of("3"), centre.outputs());
    assertEquals(200, centre.highPass().frequencyHz());
    assertNull(centre.lowPass());
    assertEquals(line.gainTargetV(), centre.gainTargetV());
    assertEquals(line.trimDb(), centre.trimDb());
    assertEquals(1000 * centre.delaySamples() / 48_000, centre.delayMs(), 1e-12);
    assertEquals(343.2 * line.delayMs(), centre.delayMm(), 1e-9);
    assertEquals(line.limiterRmsV(), centre.limiterRmsV());
    assertEquals(1250, centre.filters().get(0).frequencyHz());
    assertEquals(line.levelDbSpl(), centre.levelDbSpl());
    assertNull(centre.measured());
  }

  @Test
  void theSheetIsARowForEachChannelInCsv() {
    List<String> rows =
        new String(SetupSheet.csv(answer(plan())), StandardCharsets.UTF_8).lines().toList();
    assertEquals(7, rows.size());
    assertTrue(rows.get(0).startsWith("channel,amplifier,outputs,high_pass,low_pass,"));
    assertTrue(
        rows.get(6).startsWith("bass,bass,a + b,,\"linkwitz riley, 80 Hz, 24 dB per octave\","),
        rows.get(6));
    assertTrue(rows.get(3).contains(",peak 1250 Hz Q 2 -2.5 dB,"), rows.get(3));
  }

  @Test
  void theSheetInTextLeavesOutWhatIsNotThere() {
    String text = new String(SetupSheet.text(answer(plan())), StandardCharsets.UTF_8);
    assertTrue(
        text.startsWith("Setup sheet\n\nfront_left\n  amplifier                main\n"), text);
    assertTrue(text.contains("  polarity                 normal\n"), text);
    assertFalse(text.contains("measured"), text);
    assertTrue(text.endsWith("\nVerdict: warning\n"), text);
  }

  /** The subwoofer's 330 cm² beam at ka = 2 only from 2·343.2/(2·π·0.10249) = 1066 Hz on. */
  @Test
  void aCrossoverIsHeldAgainstWhatBothDriversBear() {
    CrossoverLine line = answer(plan()).result().crossovers().get(0);
    assertEquals("bass", line.lower());
    assertEquals(80, line.frequencyHz());
    assertEquals(HighReason.LOCALISATION, line.highestReason());
    assertEquals(120, line.highestHz());
    ObjectNode high = plan();
    ((ObjectNode) high.at("/crossovers/0")).put("frequency_hz", 200);
    assertEquals(
        List.of("crossover-too-high /crossovers/0/frequency_hz"),
        about(answer(high), "/crossovers/0/frequency_hz"));
    ObjectNode small = plan();
    part(small, "woofer_16").put("sd_cm2", 20).put("xmax_mm", 1);
    assertTrue(
        about(answer(small), "/crossovers/0")
            .contains("crossover-too-low /crossovers/0/frequency_hz"));
    ObjectNode unknown = plan();
    part(unknown, "woofer_16").remove("sd_cm2");
    assertNull(answer(unknown).result().crossovers());
  }

  @Test
  void movementHoldsAChannelBack() {
    ObjectNode plan = plan();
    part(plan, "full_8").put("xmax_mm", 0.2);
    ChannelLine centre = answer(plan).result().channels().get(2);
    assertEquals(SoundLevelResult.Holds.DISPLACEMENT, centre.heldBy());
    assertTrue(centre.largestLevelDbSpl() < centre.levelDbSpl() - 3);
    part(plan, "full_8").put("xmax_mm", 20);
    ChannelLine free = answer(plan).result().channels().get(2);
    assertEquals(SoundLevelResult.Holds.POWER, free.heldBy());
    assertEquals(free.levelDbSpl(), free.largestLevelDbSpl(), 1e-9);
  }

  /**
   * Behind a fourth-order Linkwitz-Riley the cone moves with x²/(1 + x⁴) of what it would at the
   * corner: at most half of it, as without a filter at √2 times the corner, 282.8 Hz.
   */
  @Test
  void theHighPassTakesMovementFromTheCone() {
    ObjectNode plan = plan();
    part(plan, "full_8").put("xmax_mm", 0.2);
    Answer<PlanReviewResult> answer = answer(plan);
    ChannelLine centre = answer.result().channels().get(2);
    double peaks = Piston.LEVEL_OF_DISPLACEMENT.at(200 * Math.sqrt(2), 30, 0.2, 1.2041);
    // At the seat, 0.4 m, from peaks of a sine to the average of a programme of 12 dB crest.
    assertEquals(peaks - 20 * Math.log10(0.4) + 3.0103 - 12, centre.largestLevelDbSpl(), 0.01);
  }

  @Test
  void aFilterThatIsNotForItsCrossoverIsFound() {
    ObjectNode plan = plan();
    ((ObjectNode) plan.at("/channels/5/low_pass")).put("frequency_hz", 500);
    assertTrue(
        about(answer(plan), "/channels/5/low_pass")
            .contains("filter-off-crossover /channels/5/low_pass/frequency_hz"));
    ((ObjectNode) plan.at("/channels/5/low_pass")).put("frequency_hz", 100);
    assertEquals(List.of(), about(answer(plan), "/channels/5/low_pass/frequency_hz"));
  }

  @Test
  void whatIsHeavyIsNamedAndATotalThatIsMissingSaysSo() {
    Answer<PlanReviewResult> answer = answer(plan());
    assertTrue(about(answer, "/new_parts").contains("heavy-parts /new_parts"));
    String text =
        answer.findings().stream()
            .filter(finding -> finding.code().equals("heavy-parts"))
            .findFirst()
            .orElseThrow()
            .text();
    assertTrue(text.startsWith("sub_25_dual, main, bass weigh 2 kg or more each"), text);
    ObjectNode plan = plan();
    part(plan, "woofer_16").remove("mass_g");
    part(plan, "woofer_16").remove("price");
    List<String> about = about(answer(plan), "/new_parts");
    assertTrue(about.contains("mass-not-known /new_parts"), about::toString);
    assertTrue(about.contains("price-not-known /new_parts"), about::toString);
  }

  private static ObjectNode measured(String channel, double level, double arrival, int polarity) {
    ObjectNode entry = Json.MAPPER.createObjectNode();
    entry.put("channel", channel).put("level_db_spl", level).put("arrival_ms", arrival);
    return entry.put("polarity", polarity);
  }

  @Test
  void whatWasMeasuredStandsBesideWhatWasPredicted() {
    double predicted = sheet(answer(plan()), "centre").levelDbSpl();
    double target = sheet(answer(plan()), "centre").gainTargetV();
    ObjectNode plan = plan();
    ArrayNode all = plan.putArray("measured");
    all.add(measured("centre", predicted - 2, 5.1, 1).put("gain_v", target));
    all.add(measured("bass", 112, 5.0, 1));
    Answer<PlanReviewResult> answer = answer(plan);
    MeasuredLine centre = sheet(answer, "centre").measured();
    assertEquals(-2, centre.levelOffDb(), 1e-9);
    assertEquals(0, centre.gainOffDb(), 1e-12);
    assertEquals(0.1, centre.lateMs(), 1e-12);
    assertTrue(centre.polarityRight());
    assertNull(sheet(answer, "front_left").measured());
    assertEquals(List.of(), about(answer, "/measured"));
    String csv = new String(SetupSheet.csv(answer), StandardCharsets.UTF_8);
    assertTrue(csv.contains(Double.toString(predicted - 2)), csv);
  }

  @Test
  void whatDoesNotAgreeIsFound() {
    ObjectNode plan = plan();
    ArrayNode all = plan.putArray("measured");
    all.add(measured("centre", 60, 9, -1).put("gain_v", 30));
    all.add(measured("bass", 112, 5.0, 1));
    assertEquals(
        List.of(
            "measured-polarity-wrong /measured/0/polarity",
            "measured-level-off /measured/0/level_db_spl",
            "measured-gain-off /measured/0/gain_v",
            "measured-arrival-off /measured/0/arrival_ms"),
        about(answer(plan), "/measured"));
  }

  @Test
  void whatNamesNoChannelOrOneTwiceIsRefused() {
    ObjectNode plan = plan();
    ArrayNode all = plan.putArray("measured");
    all.add(measured("center", 100, 1, 1));
    all.add(measured("bass", 100, 1, -1));
    all.add(measured("bass", 100, 1, 1));
    assertEquals(
        List.of("dangling-reference /measured/0/channel", "duplicate /measured/2/channel"),
        Answers.faults(CALCULATION, VehicleDraft.read(plan)).stream()
            .map(fault -> fault.code() + " " + fault.pointer())
            .toList());
  }
}
