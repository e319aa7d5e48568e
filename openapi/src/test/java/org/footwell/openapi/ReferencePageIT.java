package org.footwell.openapi;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The reference page in a real browser: it works, and it needs nothing from elsewhere. */
class ReferencePageIT {

  private static final Path SCREENSHOT = Path.of("target", "reference-page.png");
  private static final Path DRAWING = Path.of("target", "reference-page-sweep.png");

  @RegisterExtension private static final Windows windows = new Windows();

  /** Tries the example of an operation, and looks at what comes. */
  private static void run(String path, BiConsumer<Locator, Page> look) {
    // The page draws operations as they come into sight: a tall window shows all at once.
    Browser.NewPageOptions tall = new Browser.NewPageOptions().setViewportSize(1280, 16_000);
    windows.visit(
        "/",
        tall,
        page -> {
          Locator operation =
              page.locator(".opblock-post")
                  .filter(
                      new Locator.FilterOptions()
                          .setHas(page.locator("[data-path='" + path + "']")));
          operation.locator(".opblock-summary-control").click();
          operation.getByText("Try it out", new Locator.GetByTextOptions().setExact(true)).click();
          operation.getByText("Execute", new Locator.GetByTextOptions().setExact(true)).click();
          look.accept(operation, page);
        });
  }

  @Test
  void theExampleOfAnOperationRunsFromThePage() {
    run(
        "/v1/sound-level",
        (operation, page) -> {
          Locator answer = operation.locator(".live-responses-table .response").first();
          assertThat(answer.locator(".response-col_status")).hasText(Pattern.compile("^200\\b"));
          assertThat(answer.locator(".response-col_description"))
              .containsText(Pattern.compile("\"verdict\":\\s*\"(ok|note|warning|stop)\""));
          answer.scrollIntoViewIfNeeded();
          page.screenshot(new Page.ScreenshotOptions().setPath(SCREENSHOT));
        });
  }

  @Test
  void aSweepIsDrawnWithAxesAndUnits() {
    run(
        "/v1/{calculation}/sweep",
        (operation, page) -> {
          Locator drawing = operation.locator("figure.sweep svg");
          assertThat(drawing).hasCount(1);
          assertThat(drawing).containsText("Continuous level at the seat, dB SPL");
          assertThat(drawing).containsText("Average electrical power of the programme, W");
          assertThat(drawing).containsText("distance_m 2");
          assertThat(drawing.locator("path")).hasCount(2);
          drawing.screenshot(new Locator.ScreenshotOptions().setPath(DRAWING));
        });
  }
}
