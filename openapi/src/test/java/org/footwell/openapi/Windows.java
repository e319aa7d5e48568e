package org.footwell.openapi;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.footwell.RunningJar;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** The built service and a real browser, which notices what a page asks of other hosts; as long as a test class. */
final class Windows implements BeforeAllCallback, AfterAllCallback {

  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");

  /** What a browser says of every answer that refuses something, which pages live with. */
  private static final String REFUSED = "status of 422";

  /** How a request ends that a page no longer wants. */
  private static final String CALLED_OFF = "ERR_ABORTED";

  private static final double PATIENCE_MS = 20_000;

  private RunningJar service;
  private Playwright playwright;
  private Browser browser;

  @Override
  public void beforeAll(ExtensionContext context) throws Exception {
    PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
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

  URI address() {
    return service.address();
  }

  /** Does something on a page that must ask no other host for anything and have no errors. */
  void visit(String path, Browser.NewPageOptions options, Consumer<Page> visit) {
    visit(path, options, page -> {}, visit);
  }

  /** The same on a page of this markup, which the service answers with when it is asked. */
  void show(String markup, Browser.NewPageOptions options, Consumer<Page> visit) {
    Route.FulfillOptions shown =
        new Route.FulfillOptions().setContentType("text/html;charset=utf-8").setBody(markup);
    Route.FulfillOptions nothing = new Route.FulfillOptions().setStatus(204);
    Consumer<Page> before =
        page ->
            page.route(
                "**/*",
                route -> route.fulfill(route.request().isNavigationRequest() ? shown : nothing));
    visit("/shown", options, before, visit);
  }

  private void visit(
      String path, Browser.NewPageOptions options, Consumer<Page> before, Consumer<Page> visit) {
    List<String> elsewhere = new ArrayList<>();
    List<String> complaints = new ArrayList<>();
    try (Page page = browser.newPage(options)) {
      page.setDefaultTimeout(PATIENCE_MS);
      page.onRequest(request -> noteElsewhere(request.url(), elsewhere));
      page.onRequestFailed(
          request -> {
            if (!request.failure().contains(CALLED_OFF)) {
              complaints.add(request.url() + " " + request.failure());
            }
          });
      page.onPageError(complaints::add);
      page.onConsoleMessage(
          message -> {
            if (message.type().equals("error") && !message.text().contains(REFUSED)) {
              complaints.add(message.text());
            }
          });
      before.accept(page);
      page.navigate(address() + path);
      visit.accept(page);
    }
    assertEquals(List.of(), elsewhere, "requests to other hosts");
    assertEquals(List.of(), complaints, "complaints of the browser");
  }

  private void noteElsewhere(String url, List<String> elsewhere) {
    URI target = URI.create(url);
    boolean within = target.getScheme().equals("data") || target.getScheme().equals("blob");
    if (!within && !address().getAuthority().equals(target.getAuthority())) {
      elsewhere.add(url);
    }
  }

  /** What could not be started need not be stopped. */
  @Override
  public void afterAll(ExtensionContext context) {
    if (playwright != null) {
      playwright.close();
    }
    if (service != null) {
      service.close();
    }
  }
}
