package org.footwell.openapi;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.footwell.RunningJar;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The reference page in a real browser: it works, and it needs nothing from elsewhere. */
class ReferencePageIT {

  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path SCREENSHOT = Path.of("target", "reference-page.png");
  private static final Path DRAWING = Path.of("target", "reference-page-sweep.png");

  private static RunningJar service;
  private static Playwright playwright;
  private static Browser browser;

  @BeforeAll
  static void start() throws Exception {
    service = new RunningJar();
    playwright = Playwright.create();
    // No sandbox, since builds often run as root; the rest keeps the browser from calling home.
    List<String> flags =
        List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(CHROMIUM)
                    .setHeadless(true)
                    .setArgs(flags));
  }

  @AfterAll
  static void stop() {
    // What failed to start is absent.
    for (AutoCloseable one : new AutoCloseable[] {browser, playwright, service}) {
      if (one != null) {
        try {
          one.close();
        } catch (Exception e) {
          throw new IllegalStateException(e);
        }
      }
    }
  }

  /** Tries the example of an operation, and looks at what comes. */
  private static void run(String path, BiConsumer<Locator, Page> look) {
    List<String> elsewhere = new ArrayList<>();
    List<String> complaints = new ArrayList<>();
    try (Page page = browser.newPage()) {
      page.setDefaultTimeout(20_000);
      // The page draws operations as they come into sight: a tall window shows all at once.
      page.setViewportSize(1280, 16_000);
      page.onRequest(request -> noteElsewhere(request.url(), elsewhere));
      page.onRequestFailed(request -> complaints.add(request.url() + " " + request.failure()));
      page.onPageError(complaints::add);
      page.onConsoleMessage(
          message -> {
            if (message.type().equals("error")) {
              complaints.add(message.text());
            }
          });

      page.navigate(service.address().toString());
      Locator operation =
          page.locator(".opblock-post")
              .filter(
                  new Locator.FilterOptions().setHas(page.locator("[data-path='" + path + "']")));
      operation.locator(".opblock-summary-control").click();
      operation.getByText("Try it out", new Locator.GetByTextOptions().setExact(true)).click();
      operation.getByText("Execute", new Locator.GetByTextOptions().setExact(true)).click();
      look.accept(operation, page);
    }
    assertEquals(List.of(), elsewhere, "requests to other hosts");
    assertEquals(List.of(), complaints, "complaints of the browser");
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

  private static void noteElsewhere(String url, List<String> elsewhere) {
    URI target = URI.create(url);
    boolean within = target.getScheme().equals("data") || target.getScheme().equals("blob");
    if (!within && !service.address().getAuthority().equals(target.getAuthority())) {
      elsewhere.add(url);
    }
  }
}
