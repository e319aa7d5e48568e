package org.footwell.openapi;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.footwell.Committed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** How plans come to the page at {@code /plan} and leave it: opened, kept, saved, as sheets. */
class PlanPageFilesIT {

  @RegisterExtension private static final Windows windows = new Windows();

  private static void visit(BiConsumer<PlanPage, Page> visit) {
    Browser.NewPageOptions options =
        new Browser.NewPageOptions().setViewportSize(1280, 900).setAcceptDownloads(true);
    PlanPage.visit(windows, options, visit);
  }

  @Test
  void aPlanThatNobodyChangedIsSavedLetterForLetter() {
    Map<String, String> demos =
        Map.of(
            "Camper van", "camper-van.json",
            "Estate", "factory-estate.json",
            "Hatchback", "low-budget-hatchback.json");
    demos.forEach(
        (name, file) ->
            visit(
                (plan, page) -> {
                  plan.button(name).click();
                  plan.current();
                  assertEquals(PlanPage.demo(file), plan.saved());
                }));
  }

  @Test
  void aFileIsChosenOrDroppedOnThePage() {
    visit(
        (plan, page) -> {
          page.getByLabel("From a file")
              .setInputFiles(Committed.PROJECT.resolve("docs/examples/camper-van.json"));
          plan.current();
          assertEquals(PlanPage.camperVan(), plan.saved());
          page.evaluate(
              "text => { const dropped = new DataTransfer(); dropped.items.add(new File([text],"
                  + " 'mine.json')); window.dispatchEvent(new DragEvent('drop', {dataTransfer:"
                  + " dropped})); }",
              PlanPage.demo("factory-estate.json"));
          assertThat(page.locator("#vehicle")).hasText("Halmera Solveig, estate");
          plan.current();
          Download saved = page.waitForDownload(() -> plan.button("Save as a file").click());
          assertEquals("mine.json", saved.suggestedFilename());
        });
  }

  @Test
  void whatTheContractDoesNotKnowIsKeptAndShown() {
    visit(
        (plan, page) -> {
          String odd = "{\"note\": [1.50, \"<b>\"],\n" + PlanPage.camperVan().substring(1);
          plan.paste(odd);
          assertThat(plan.faults()).containsText("note is not a known field");
          plan.openSection("others");
          assertThat(plan.section("others").locator("pre")).hasText("[1.50, \"<b>\"]");
          assertEquals(odd, plan.saved());
          plan.button("Remove: note").click();
          plan.current();
          assertEquals(PlanPage.tree(PlanPage.camperVan()), PlanPage.tree(plan.saved()));
        });
  }

  @Test
  void whatIsNoJsonIsToldWithItsPlaceAndNothingIsLost() {
    visit(
        (plan, page) -> {
          plan.paste("{\"vehicle\":\n {]}");
          assertThat(page.locator("#opening .fault")).containsText("line 2, column 3");
          assertThat(page.getByLabel("From pasted text")).hasValue("{\"vehicle\":\n {]}");
        });
  }

  @Test
  void everyFormatForPeopleHasAButtonAndTheSetupComesAsAFile() throws Exception {
    JsonNode contract =
        PlanPage.tree(
            HttpClient.newHttpClient()
                .send(
                    HttpRequest.newBuilder(windows.address().resolve("/openapi.json")).build(),
                    HttpResponse.BodyHandlers.ofString())
                .body());
    List<String> formats = new ArrayList<>();
    for (JsonNode parameter : contract.at("/paths/~1v1~1plan-review/post/parameters")) {
      parameter.at("/schema/enum").forEach(format -> formats.add(format.asText()));
    }
    formats.removeAll(List.of("json", "xml"));
    visit(
        (plan, page) -> {
          plan.openCamperVan();
          assertEquals(
              formats,
              page.evaluate(
                  "[...document.querySelectorAll('#sheets button')].map((one) => one.dataset.format)"));
          Download csv = page.waitForDownload(() -> plan.button("Setup as CSV").click());
          assertEquals("plan-review-setup.csv", csv.suggestedFilename());
          assertTrue(PlanPage.content(csv.path()).contains("front_left"));
        });
  }

  @Test
  void leavingAsksOnlyWhereSomethingWouldBeLost() {
    visit(
        (plan, page) -> {
          List<String> asked = new ArrayList<>();
          page.onDialog(
              dialog -> {
                asked.add(dialog.type());
                dialog.dismiss();
              });
          plan.openCamperVan();
          plan.openSection("vehicle");
          plan.control("/vehicle/road_noise_dba").fill("70");
          plan.button("Open …").click();
          plan.button("Estate").click();
          page.waitForCondition(() -> !asked.isEmpty());
          assertThat(plan.control("/vehicle/road_noise_dba")).hasValue("70");
          page.evaluate("setTimeout(() => location.reload())");
          page.waitForCondition(() -> asked.size() == 2);
          assertEquals(List.of("confirm", "beforeunload"), asked);
          assertThat(plan.control("/vehicle/road_noise_dba")).hasValue("70");
          plan.saved();
          page.reload();
          assertEquals(2, asked.size());
        });
  }
}
