package org.footwell.openapi;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sheets for everybody: wide and narrow, light and dark. Pictures of all lie in {@code target}. */
class SheetLookIT {

  private static final Path PICTURES = Path.of("target", "sheets");

  private static final String OFFER = "-offer";

  @RegisterExtension private static final Windows windows = new Windows();

  @BeforeAll
  static void start() throws Exception {
    Files.createDirectories(PICTURES);
  }

  @ParameterizedTest
  @CsvSource({
    "plan-review, camper-van, html, en",
    "plan-review, camper-van, html, de",
    "plan-review, factory-estate, html, en",
    "plan-review, low-budget-hatchback, fitter.html, en",
    "plan-review, camper-van, fitter.html, de",
    "plan-curves, camper-van, html, en",
    "package-options, camper-van-offer, html, en",
    "driver-comparison/of-plan, camper-van, html, en",
    "driver-comparison/of-plan, camper-van, html, de",
  })
  void everySheetIsFitForEverybody(String calculation, String example, String format, String lang)
      throws Exception {
    String sheet = sheet(calculation, example, format, lang);
    for (int width : new int[] {1280, 360}) {
      for (ColorScheme scheme : new ColorScheme[] {ColorScheme.LIGHT, ColorScheme.DARK}) {
        Browser.NewPageOptions options =
            new Browser.NewPageOptions().setViewportSize(width, 800).setColorScheme(scheme);
        String kind = scheme.name().toLowerCase(Locale.ROOT);
        String name =
            String.join("-", calculation, example, format, lang, width + "", kind)
                .replace('/', '-');
        windows.show(
            sheet, options, page -> Fitness.assertFit(page, PICTURES.resolve(name + ".png")));
      }
    }
  }

  /** A plan, or an offer with the plan it is for. */
  private static String request(String example) throws IOException {
    ObjectNode request = read(example);
    if (example.endsWith(OFFER)) {
      request.set("plan", read(example.replace(OFFER, "")));
    }
    return request.toString();
  }

  private static ObjectNode read(String example) throws IOException {
    Path file = Path.of("../docs/examples/" + example + ".json");
    return (ObjectNode) new ObjectMapper().readTree(file.toFile());
  }

  private static String sheet(String calculation, String example, String format, String lang)
      throws IOException, InterruptedException {
    URI address =
        URI.create(
            windows.address() + "/v1/" + calculation + "?format=" + format + "&lang=" + lang);
    HttpResponse<String> answer =
        HttpClient.newHttpClient()
            .send(
                HttpRequest.newBuilder(address)
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(request(example)))
                    .build(),
                HttpResponse.BodyHandlers.ofString());
    assertEquals(200, answer.statusCode(), answer.body());
    return answer.body();
  }
}
