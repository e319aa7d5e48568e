package org.footwell.openapi;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Work on a plan in a real browser: edited by form, keyboard and drawing, and reviewed. */
class PlanPageIT {

  private static final String CROSSOVER = "/crossovers/0/frequency_hz";

  @RegisterExtension private static final Windows windows = new Windows();

  private static void visit(BiConsumer<PlanPage, Page> visit) {
    Browser.NewPageOptions options =
        new Browser.NewPageOptions().setViewportSize(1280, 900).setAcceptDownloads(true);
    PlanPage.visit(windows, options, visit);
  }

  @Test
  void aCrossoverIsChangedInThreeStepsAndTheReviewFollows() {
    visit(
        (plan, page) -> {
          plan.openCamperVan();
          plan.openSection("crossovers");
          plan.open("/crossovers/0");
          plan.control(CROSSOVER).fill("150,50");
          assertThat(plan.status()).containsText("Out of date");
          plan.current();
          assertThat(plan.section("crossovers").locator("> summary .badges"))
              .containsText("1 warning");
          String once = "\"upper\": \"front_left\", \"frequency_hz\": ";
          assertEquals(PlanPage.camperVan().replace(once + "80", once + "150.50"), plan.saved());
          page.keyboard().press("Control+z");
          plan.current();
          assertThat(plan.control(CROSSOVER)).hasValue("80");
          assertEquals(PlanPage.camperVan(), plan.saved());
          page.keyboard().press("Control+y");
          assertThat(plan.control(CROSSOVER)).hasValue("150.50");
        });
  }

  @Test
  void theKeyboardIsEnough() {
    visit(
        (plan, page) -> {
          assertThat(plan.button("Camper van")).isVisible();
          press(page, "Tab", () -> "Camper van".equals(start(page, 10)));
          page.keyboard().press("Enter");
          plan.current();
          press(page, "Tab", () -> "Crossovers".equals(start(page, 10)));
          page.keyboard().press("Enter");
          press(page, "Tab", () -> start(page, 30).contains("– \u2068front_right"));
          page.keyboard().press("Enter");
          press(page, "Tab", () -> "f/crossovers/1/frequency_hz".equals(plan.focus()));
          page.keyboard().press("Control+a");
          page.keyboard().type("90");
          plan.current();
          String once = "\"upper\": \"front_right\", \"frequency_hz\": ";
          Download download = page.waitForDownload(() -> page.keyboard().press("Control+s"));
          assertEquals(
              PlanPage.camperVan().replace(once + "80", once + "90"),
              PlanPage.content(download.path()));
        });
  }

  /** Presses a key until something is so, as often as a patient person would. */
  private static void press(Page page, String key, BooleanSupplier until) {
    for (int i = 0; i < 60; i++) {
      page.keyboard().press(key);
      if (until.getAsBoolean()) {
        return;
      }
    }
    throw new AssertionError("not reached with " + key);
  }

  private static String start(Page page, int most) {
    String text = (String) page.evaluate("document.activeElement.textContent");
    return text.substring(0, Math.min(most, text.length()));
  }

  @Test
  void aLoudspeakerIsMovedOnTheDrawing() {
    visit(
        (plan, page) -> {
          plan.openCamperVan();
          plan.openSection("positions");
          plan.mark("/drivers/4").scrollIntoViewIfNeeded();
          BoundingBox box = plan.mark("/drivers/4").boundingBox();
          double x = box.x + box.width / 2;
          double y = box.y + box.height / 2;
          page.mouse().move(x, y);
          page.mouse().down();
          page.mouse().move(x + 20, y + 10);
          page.mouse().move(x + 40, y + 20);
          page.mouse().up();
          plan.current();
          JsonNode dragged = position(plan.saved());
          assertTrue(dragged.get("x_m").asDouble() < 0.98, dragged.toString());
          assertTrue(dragged.get("y_m").asDouble() < -0.15, dragged.toString());
          plan.mark("/drivers/4").focus();
          page.keyboard().press("ArrowUp");
          page.keyboard().press("Shift+ArrowLeft");
          page.keyboard().press("PageDown");
          JsonNode moved = position(plan.saved());
          assertEquals(dragged.get("x_m").asDouble() + 0.01, moved.get("x_m").asDouble(), 1e-9);
          assertEquals(dragged.get("y_m").asDouble() + 0.1, moved.get("y_m").asDouble(), 1e-9);
          assertEquals(dragged.get("z_m").asDouble() - 0.01, moved.get("z_m").asDouble(), 1e-9);
          plan.mark("/drivers/4").focus();
          page.keyboard().press("Enter");
          assertEquals("positions:/drivers/4/position/x_m", plan.focus());
          page.keyboard().press("Control+z");
          page.keyboard().press("Control+z");
          plan.current();
          assertEquals(PlanPage.camperVan(), plan.saved());
        });
  }

  @Test
  void aLengthIsTypedWithItsUnit() {
    visit(
        (plan, page) -> {
          plan.openCamperVan();
          plan.openSection("vehicle");
          String length = "/vehicle/cabin/length_m";
          plan.open("/vehicle/cabin");
          for (String typed : List.of("11 1/2 ft", "138 in", "350.52 cm")) {
            plan.control(length).fill("3");
            plan.control(length).fill(typed);
            assertEquals(3.5052, PlanPage.tree(plan.saved()).at(length).asDouble(), typed);
            assertEquals(typed, plan.control(length).inputValue());
          }
          plan.control(length).fill("4 AWG");
          assertEquals("4 AWG", PlanPage.tree(plan.saved()).at(length).asText());
          plan.control(length).fill("3.4");
          plan.current();
        });
  }

  private static JsonNode position(String plan) {
    return PlanPage.tree(plan).at("/drivers/4/position");
  }

  @Test
  void allFaultsStandAtTheirFieldsAndWhatWasTypedStays() {
    visit(
        (plan, page) -> {
          plan.openCamperVan();
          plan.openSection("crossovers");
          plan.open("/crossovers/0");
          plan.openSection("vehicle");
          plan.control(CROSSOVER).fill("eighty");
          plan.control("/vehicle/temperature_c").fill("200");
          plan.control("/vehicle/name").fill("");
          assertThat(plan.faults()).containsText("3 faults");
          assertThat(plan.status()).containsText("Out of date");
          assertThat(plan.figure("Level at the seat")).containsText("110.1");
          for (String at : List.of(CROSSOVER, "/vehicle/temperature_c", "/vehicle/name")) {
            assertThat(plan.said(at)).not().hasText("");
            assertThat(plan.control(at)).hasAttribute("aria-invalid", "true");
          }
          assertThat(plan.control(CROSSOVER)).hasValue("eighty");
          assertThat(plan.section("vehicle").locator("> summary .badges")).containsText("2 faults");
          plan.openSection("crossovers");
          plan.faults()
              .getByRole(AriaRole.BUTTON)
              .filter(new Locator.FilterOptions().setHasText("Frequency"))
              .click();
          assertEquals("f" + CROSSOVER, plan.focus());
          plan.control(CROSSOVER).fill("80");
          plan.control("/vehicle/temperature_c").fill("20");
          plan.control("/vehicle/name").fill("Halmera camper van, high roof");
          plan.current();
          assertThat(plan.faults()).isHidden();
        });
  }

  @Test
  void anOlderAnswerNeverTakesThePlaceOfANewerOne() {
    visit(
        (plan, page) -> {
          plan.openCamperVan();
          plan.openSection("vehicle");
          List<Runnable> held = new ArrayList<>();
          page.route(
              Pattern.compile(".*/v1/plan-review(\\?.*)?$"),
              route -> {
                if (route.request().postData().contains("older")) {
                  held.add(route::resume);
                } else {
                  route.resume();
                }
              });
          plan.control("/vehicle/temperature_c").fill("older");
          page.waitForCondition(() -> !held.isEmpty());
          plan.control("/vehicle/temperature_c").fill("25");
          plan.current();
          held.forEach(Runnable::run);
          page.waitForTimeout(500);
          plan.current();
          assertThat(plan.faults()).isHidden();
        });
  }

  @Test
  void entriesAreAddedDuplicatedAndRemovedAndPartsComeFromAList() {
    visit(
        (plan, page) -> {
          plan.openCamperVan();
          plan.openSection("positions");
          plan.open("/drivers/4");
          plan.button("Duplicate: \u2068centre_full").click();
          assertThat(plan.control("/drivers/9/id")).hasValue("centre_full_10");
          assertThat(plan.control("/drivers/9/part").locator("option"))
              .containsText(
                  new String[] {
                    "–", "woofer_16", "tweeter_25", "full_8", "coaxial_13", "sub_25_dual"
                  });
          plan.control("/drivers/9/part").selectOption("\"tweeter_25\"");
          assertEquals("tweeter_25", PlanPage.tree(plan.saved()).at("/drivers/9/part").asText());
          plan.button("Remove: \u2068centre_full_10").click();
          plan.current();
          assertEquals(PlanPage.tree(PlanPage.camperVan()), PlanPage.tree(plan.saved()));
          plan.openSection("extras");
          plan.section("extras").getByText("Add an entry").click();
          plan.control("/extras/0/name").fill("Ring");
          plan.control("/extras/0/name").press("Tab");
          plan.current();
          assertEquals("Ring", PlanPage.tree(plan.saved()).at("/extras/0/name").asText());
        });
  }
}
