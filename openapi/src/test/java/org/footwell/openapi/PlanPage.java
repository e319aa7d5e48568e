package org.footwell.openapi;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BiConsumer;
import org.footwell.Committed;

/** The page at {@code /plan} as somebody who works with it sees it. */
final class PlanPage {

  private static final String CURRENT = "Up to date with the plan.";

  private static final String ADDRESS = "/plan";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Page page;

  PlanPage(Page page) {
    this.page = page;
  }

  /** Does something on the page in a window of its own. */
  static void visit(
      Windows windows, Browser.NewPageOptions options, BiConsumer<PlanPage, Page> visit) {
    windows.visit(ADDRESS, options, page -> visit.accept(new PlanPage(page), page));
  }

  static JsonNode tree(String json) {
    try {
      return MAPPER.readTree(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String demo(String name) {
    try {
      return Files.readString(Committed.PROJECT.resolve("docs/examples").resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String camperVan() {
    return demo("camper-van.json");
  }

  PlanPage openCamperVan() {
    button("Camper van").click();
    return current();
  }

  /** Pastes a document; whether it can be calculated is for the caller to wait for. */
  PlanPage paste(String text) {
    page.getByLabel("From pasted text").fill(text);
    button("Use this text").click();
    return this;
  }

  PlanPage current() {
    assertThat(status()).hasText(CURRENT);
    return this;
  }

  Locator status() {
    return page.locator("#status");
  }

  Locator button(String name) {
    return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
  }

  Locator section(String name) {
    return page.locator("#section-" + name);
  }

  void openSection(String name) {
    section(name).locator("> summary").click();
  }

  /** Opens an entry, a record or a list by its pointer; what it lies in must be open. */
  void open(String pointer) {
    page.locator("details[data-key='" + pointer + "'] > summary").first().click();
  }

  /** The control of a value, by its pointer. */
  Locator control(String pointer) {
    return page.locator("[id='f" + pointer + "']");
  }

  /** What is said at a place of the form. */
  Locator said(String pointer) {
    return page.locator("[id='f" + pointer + ":said']");
  }

  /** A seat or loudspeaker on the drawing. */
  Locator mark(String pointer) {
    return page.locator("[id='positions-mark:" + pointer + "']");
  }

  Locator faults() {
    return page.locator(".part.faults");
  }

  /** The headline figure under a name. */
  Locator figure(String name) {
    return page.locator(".figures dl > div").filter(new Locator.FilterOptions().setHasText(name));
  }

  String saved() {
    Download download = page.waitForDownload(() -> button("Save as a file").click());
    return content(download.path());
  }

  static String content(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The id of what has the focus. */
  String focus() {
    return (String) page.evaluate("document.activeElement.id");
  }
}
