package org.footwell.openapi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Whether a page is fit for everybody: by the rules of axe, and with nothing beyond the edge. */
final class Fitness {

  /** Every rule, also that for the size of targets, which has to be asked for. */
  private static final String JUDGE =
      "() => axe.run(document, {rules: {'target-size': {enabled: true}}}).then(({violations,"
          + " passes}) => ({passed: passes.length, wrong: violations.map((one) => one.id + ': ' +"
          + " one.nodes.map((node) => node.html).join(' | '))}))";

  private static final int FEWEST_RULES = 12;

  private static final String AXE = axe();

  private Fitness() {}

  private static String axe() {
    try (InputStream script = Fitness.class.getResourceAsStream("/axe.min.js")) {
      return new String(script.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Takes a picture of the whole page, and judges it. */
  static void assertFit(Page page, Path picture) {
    page.screenshot(new Page.ScreenshotOptions().setPath(picture).setFullPage(true));
    page.evaluate(AXE);
    Map<?, ?> judged = (Map<?, ?>) page.evaluate(JUDGE);
    assertEquals(List.of(), judged.get("wrong"), picture.toString());
    assertTrue((int) judged.get("passed") >= FEWEST_RULES, picture + ": " + judged.get("passed"));
    assertEquals(
        page.evaluate("innerWidth"),
        page.evaluate("document.documentElement.scrollWidth"),
        picture.toString());
  }
}
