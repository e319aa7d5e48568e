package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The way back to how a vehicle left the factory. */
class RestoringTest {

  private static PlanDraft estate() {
    return PlanDraft.ofFile("../docs/examples/factory-estate.json");
  }

  private static List<RestoreLine> of(PlanReviewResult result, RestoreStep step) {
    return result.restore().stream().filter(line -> line.step() == step).toList();
  }

  @Test
  void everyPartThatWasTakenOutGoesBackWhereItWas() {
    PlanReviewResult result = estate().review().result();
    RestoreLine doors =
        new RestoreLine(
            RestoreStep.PLUG_BACK, List.of("factory_door"), List.of("left_woofer", "right_woofer"));
    assertEquals(doors, of(result, RestoreStep.PLUG_BACK).get(0));
    assertEquals(3, of(result, RestoreStep.PLUG_BACK).size());
    assertEquals(
        List.of("factory_door", "factory_pillar", "factory_rear"),
        of(result, RestoreStep.KEEP).stream().map(line -> line.ids().get(0)).toList());
    List<String> out = of(result, RestoreStep.TAKE_OUT).get(0).ids();
    assertTrue(out.containsAll(List.of("sub", "left_woofer", "dsp", "mono")), out.toString());
    assertEquals(
        List.of(new RestoreLine(RestoreStep.RECONNECT, List.of("doors", "pillars", "rear"), null)),
        of(result, RestoreStep.RECONNECT));
    assertEquals(1, of(result, RestoreStep.STAYS).size());
  }

  @Test
  void theChimesAreCheckedLast() {
    List<RestoreLine> steps = estate().review().result().restore();
    assertEquals(RestoreStep.CHECK_CHIMES, steps.get(steps.size() - 1).step());
    // A head unit that does not stay is not reconnected.
    PlanReviewResult van = PlanDraft.van().review().result();
    assertTrue(of(van, RestoreStep.RECONNECT).isEmpty());
    assertTrue(of(van, RestoreStep.STAYS).isEmpty());
    assertEquals(1, of(van, RestoreStep.CHECK_CHIMES).size());
  }

  @Test
  void withoutAnythingOfTheFactoryThereIsNoWayBack() {
    PlanDraft plan = PlanDraft.ofFile("src/test/resources/codes/plan-review/loud.json");
    assertNull(plan.review().result().restore());
    assertFalse(text(plan).contains("Back to the factory state"));
  }

  @Test
  void theSheetAsTextEndsWithIt() {
    String sheet = text(estate());
    String back = sheet.substring(sheet.indexOf("\nBack to the factory state\n"));
    assertTrue(
        back.contains(
            "  - Put factory_door back at left_woofer, right_woofer, on the factory plugs"),
        back);
    assertTrue(
        back.contains("Connect the head unit again to its own loudspeakers: doors, pillars, rear."),
        back);
    assertTrue(back.contains("Check that every chime, warning and emergency call"), back);
  }

  private static String text(PlanDraft plan) {
    return Sheets.text("setup_text", plan.read(), plan.review());
  }
}
