package org.footwell.openapi;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The page at {@code /plan} for everybody: its states wide and narrow, light and dark, on paper,
 * and with names that somebody made up to do harm. Pictures of all of them lie in {@code target}.
 */
class PlanPageLookIT {

  private static final Path PICTURES = Path.of("target", "plan-page");
  private static final String SCRIPT = "<script>window.hit = 1</script><img src=x onerror=hit=1>";

  /** Controls lower or narrower than a finger; a box to tick counts with its label. */
  private static final String SMALL =
      "() => [...document.querySelectorAll('button, select, input:not([type=checkbox]), summary,"
          + " textarea, #short, .explain')].filter((one) => one.checkVisibility()).filter((one) => {"
          + " const {width, height} = one.getBoundingClientRect(); return height < 44 || width < 44;"
          + " }).map((one) => one.outerHTML.slice(0, 200))";

  @RegisterExtension private static final Windows windows = new Windows();

  @BeforeAll
  static void start() throws Exception {
    Files.createDirectories(PICTURES);
  }

  private static void visit(int width, ColorScheme scheme, BiConsumer<PlanPage, Page> visit) {
    Browser.NewPageOptions options =
        new Browser.NewPageOptions()
            .setViewportSize(width, 800)
            .setColorScheme(scheme)
            .setHasTouch(width < 600);
    PlanPage.visit(windows, options, visit);
  }

  /** Nothing for axe to say, nothing beyond the edge, nothing too small for a finger; a picture. */
  private static void assertFit(Page page, String state) {
    Fitness.assertFit(page, PICTURES.resolve(state + ".png"));
    assertEquals(List.of(), page.evaluate(SMALL), state);
  }

  @ParameterizedTest
  @CsvSource({"1280, LIGHT", "1280, DARK", "360, LIGHT", "360, DARK"})
  void everyStateIsFitForEverybody(int width, ColorScheme scheme) {
    String kind = "-" + width + "-" + scheme.name().toLowerCase(Locale.ROOT);
    visit(
        width,
        scheme,
        (plan, page) -> {
          assertThat(plan.button("Camper van")).isVisible();
          assertFit(page, "start" + kind);
          plan.openCamperVan();
          assertFit(page, "opened" + kind);
          for (String section : List.of("positions", "parts", "channels", "signal", "extras")) {
            plan.openSection(section);
          }
          plan.open("/new_parts");
          plan.open("/new_parts/0");
          plan.open("/channels/0");
          plan.open("/channels/0/high_pass");
          plan.open("/channels/0/branches");
          plan.open("/channels/0:more");
          page.locator(".plots-part > summary").click();
          assertThat(page.locator(".plots svg").first()).isVisible();
          page.locator(".safety summary").click();
          assertFit(page, "sections" + kind);
          plan.control("/channels/0/id").fill("no such id!");
          assertThat(plan.faults()).containsText("fault");
          assertFit(page, "faults" + kind);
        });
  }

  @ParameterizedTest
  @CsvSource({"1280, LIGHT", "360, DARK"})
  void namesThatMeanHarmAreText(int width, ColorScheme scheme) {
    ObjectNode hostile = (ObjectNode) PlanPage.tree(PlanPage.camperVan());
    String backwards = "\u202Eمركبة \uD83D\uDE90";
    String endless = "L".repeat(2000);
    ((ObjectNode) hostile.get("vehicle")).put("name", SCRIPT);
    ((ObjectNode) hostile.at("/new_parts/0/driver")).put("name", backwards);
    ((ObjectNode) hostile.at("/amplifiers/0")).put("name", "\uD83D\uDE90\uD83D\uDD0A");
    ((ObjectNode) hostile.at("/seats/0")).put("name", SCRIPT);
    ((ObjectNode) hostile.at("/seats/1")).put("name", endless);
    hostile.put(SCRIPT, endless);
    visit(
        width,
        scheme,
        (plan, page) -> {
          plan.paste(hostile.toString());
          assertThat(plan.faults()).containsText("is not a known field");
          for (String section : List.of("vehicle", "seats", "parts", "amplifiers", "others")) {
            plan.openSection(section);
          }
          plan.open("/new_parts");
          plan.open("/new_parts/0");
          plan.open("/seats/1");
          assertThat(page.locator("#vehicle")).hasText(SCRIPT);
          assertThat(plan.control("/seats/1/name")).hasValue(endless);
          assertThat(plan.section("others").locator("pre")).hasText('"' + endless + '"');
          assertThat(page.locator("body")).containsText("\u2068" + backwards + "\u2069");
          assertEquals(null, page.evaluate("window.hit"));
          assertEquals(0, page.locator("main script, main img").count());
          assertFit(page, "hostile-" + width);
        });
  }

  @Test
  void thePageItselfPrintsAsASheet() {
    visit(
        1280,
        ColorScheme.DARK,
        (plan, page) -> {
          plan.openCamperVan();
          page.evaluate("window.print = () => (window.printed = true)");
          plan.button("Print").click();
          page.waitForCondition(() -> Boolean.TRUE.equals(page.evaluate("window.printed")));
          page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
          for (String shown : List.of("#vehicle", ".verdict", ".figures", ".setup", ".plots svg")) {
            assertThat(page.locator(shown).first()).isVisible();
          }
          for (String hidden : List.of("#form", "#tools", "#sheets", "#short", "#opening")) {
            assertThat(page.locator(hidden)).isHidden();
          }
          page.screenshot(
              new Page.ScreenshotOptions()
                  .setPath(PICTURES.resolve("printed.png"))
                  .setFullPage(true));
          byte[] paper = page.pdf(new Page.PdfOptions().setFormat("A4"));
          assertEquals("%PDF-", new String(paper, 0, 5, StandardCharsets.US_ASCII));
        });
  }
}
