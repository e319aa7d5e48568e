package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.vehicle.PlanReviewResult.NotJudged;
import org.junit.jupiter.api.Test;

/** What a factory part was against what replaces it, worked by hand. */
class ReplacementsTest {

  private static PlanDraft known() {
    return PlanDraft.van()
        .with(
            "/factory_parts/0/driver/sensitivity",
            "{\"level_db_spl\": 88, \"basis\": \"one_watt\"}")
        .with("/factory_parts/0/driver/fs_hz", "124");
  }

  private static ReplacementLine line(PlanReviewResult result, String driver) {
    return result.replacements().stream()
        .filter(line -> line.driver().equals(driver))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aReplacedPositionIsHeldAgainstWhatWasThere() {
    PlanReviewResult result = known().review().result();
    ReplacementLine door = line(result, "front_left_woofer");
    assertEquals("factory_door", door.factoryPart());
    assertEquals("woofer_16", door.newPart());
    // 88 dB for a watt into 4 ohm are 88 + 10·lg(2.83²/4) = 91.015 dB at 2.83 V; the new one has
    // 90.5.
    assertEquals(-0.515, door.levelChangeDb(), 0.001);
    assertEquals(1250 - 620, door.massChangeG(), 1e-9);
    // 124 Hz to 62 Hz is an octave.
    assertEquals(1, door.lowerReachOctaves(), 1e-12);
    assertEquals(
        List.of(
            "front_left_woofer", "front_right_woofer", "rear_left_coaxial", "rear_right_coaxial"),
        result.replacements().stream().map(ReplacementLine::driver).toList());
  }

  @Test
  void statedLimitsCountBeforeResonances() {
    PlanReviewResult result =
        known()
            .with("/factory_parts/0/driver/lower_limit_hz", "80")
            .with("/new_parts/0/driver/lower_limit_hz", "160")
            .review()
            .result();
    assertEquals(-1, line(result, "front_left_woofer").lowerReachOctaves(), 1e-12);
  }

  @Test
  void whatIsNotKnownIsLeftOutAndListedOnce() {
    PlanReviewResult result =
        known()
            .without("/factory_parts/1/driver/sensitivity")
            .without("/factory_parts/1/driver/fs_hz")
            .review()
            .result();
    ReplacementLine rear = line(result, "rear_left_coaxial");
    assertNull(rear.levelChangeDb());
    assertNull(rear.lowerReachOctaves());
    assertEquals(780 - 410, rear.massChangeG(), 1e-9);
    List<NotJudged> missing =
        result.notJudged().stream().filter(one -> one.what() == Unjudged.REPLACEMENT).toList();
    assertEquals(1, missing.size());
    assertEquals(
        List.of("/factory_parts/1/driver/sensitivity", "/factory_parts/1/driver/fs_hz"),
        missing.get(0).missing());
  }

  @Test
  void withoutAFactoryPartThereIsNothingToHoldAgainst() {
    PlanReviewResult result =
        PlanDraft.ofFile("src/test/resources/codes/plan-review/loud.json").review().result();
    assertNull(result.replacements());
    assertTrue(
        result.notJudged() == null
            || result.notJudged().stream().noneMatch(one -> one.what() == Unjudged.REPLACEMENT));
  }
}
