package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.footwell.calculation.Answer;
import org.footwell.calculation.text.Texts;
import org.footwell.parts.Safety;
import org.junit.jupiter.api.Test;

/** Cautions are said where a plan makes them relevant, behind those that stand with every answer. */
class PlanCautionTest {

  private static List<PlanCaution> said(PlanDraft plan) {
    List<String> safety = plan.review().safety();
    return Stream.of(PlanCaution.values())
        .filter(one -> safety.contains(Texts.of(one, Locale.ROOT)))
        .toList();
  }

  private static PlanDraft bare() {
    PlanDraft plan = PlanDraft.van();
    for (int d = 0; d < 9; d++) {
      plan.without("/drivers/" + d + "/mounted_in").without("/drivers/" + d + "/replaces");
    }
    return plan.without("/amplifiers/0/feed").without("/amplifiers/1/feed");
  }

  @Test
  void aPlanThatSaysNothingOfItsVehicleHasTheUsualOnesOnly() {
    Answer<PlanReviewResult> answer = bare().review();
    assertEquals(Safety.values().length, answer.safety().size());
    assertEquals(List.of(), said(bare()));
  }

  @Test
  void whatTheVanIsBuiltIntoIsCautionedOf() {
    assertEquals(
        List.of(
            PlanCaution.IN_DOORS,
            PlanCaution.IN_PILLARS,
            PlanCaution.UNDER_SEATS,
            PlanCaution.WAIT_AFTER_DISCONNECTING,
            PlanCaution.EARTH_THROUGH_BODY,
            PlanCaution.CHIMES),
        said(PlanDraft.van()));
  }

  @Test
  void eachPropertyOfTheVehicleBringsItsOwn() {
    assertEquals(
        List.of(PlanCaution.HIGH_VOLTAGE), said(bare().with("/vehicle/high_voltage", "true")));
    assertEquals(List.of(), said(bare().with("/vehicle/high_voltage", "false")));
    assertEquals(List.of(PlanCaution.START_STOP), said(bare().with("/vehicle/start_stop", "true")));
    assertEquals(
        List.of(PlanCaution.LITHIUM_STARTER),
        said(bare().with("/vehicle/lithium_starter", "true")));
    assertEquals(
        List.of(PlanCaution.BATTERY_SENSOR), said(bare().with("/vehicle/battery_sensor", "true")));
    assertEquals(
        List.of(PlanCaution.FORTY_EIGHT_VOLT), said(bare().with("/vehicle/nominal_v", "48")));
    assertEquals(List.of(), said(bare().with("/vehicle/nominal_v", "24")));
    assertEquals(
        List.of(PlanCaution.SECOND_BATTERY), said(bare().with("/supply/split_charge", "true")));
    assertEquals(
        List.of(PlanCaution.BEHIND_PANELS), said(bare().with("/drivers/7/mounted_in", "\"boot\"")));
    assertTrue(
        said(bare().with("/drivers/0/replaces", "\"factory_door\"")).contains(PlanCaution.CHIMES));
  }
}
