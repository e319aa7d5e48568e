package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The sentences of findings in inches, held against those in metres: the same figures by the factors of NIST
 * Special Publication 811, appendix B (inch 25.4 mm, foot 304.8 mm, both exact), and none is left over.
 */
@ExtendWith(RunningServer.class)
@Tag("long")
class FindingUnitsTest {

  private static final Pattern METRIC = number("mm|cm|m|cm²|cm³|m³|litre");
  private static final Pattern INCH = number("in|ft|in²|in³|ft³");

  /** Metres, square metres or cubic metres in one. */
  private static final Map<String, Double> WORTH =
      Map.ofEntries(
          Map.entry("mm", 1e-3),
          Map.entry("cm", 1e-2),
          Map.entry("m", 1.0),
          Map.entry("cm²", 1e-4),
          Map.entry("cm³", 1e-6),
          Map.entry("m³", 1.0),
          Map.entry("litre", 1e-3),
          Map.entry("in", 25.4e-3),
          Map.entry("ft", 304.8e-3),
          Map.entry("in²", 25.4e-3 * 25.4e-3),
          Map.entry("in³", 25.4e-3 * 25.4e-3 * 25.4e-3),
          Map.entry("ft³", 304.8e-3 * 304.8e-3 * 304.8e-3));

  /** Four digits are shown; each of the two figures is off by half of the last at most. */
  private static final double ROUNDED_TWICE = 1.001e-3;

  /** Fewer would mean that nothing is compared. */
  private static final int MANY = 60;

  private static Pattern number(String units) {
    return Pattern.compile("(−?[0-9.]+(?:e-?\\d+)?) (" + units + ")(?![\\p{L}²³/·])");
  }

  @Test
  void sentencesSayTheSameInInches() throws Exception {
    int compared = 0;
    for (CodeRequest request : CodeRequest.all().toList()) {
      if (!request.ofCore() && request.request().isObject()) {
        List<MatchResult> metric = figures(request, "metric", METRIC);
        List<MatchResult> inch = figures(request, "inch", INCH);
        assertEquals(metric.size(), inch.size(), () -> request + ": " + metric + " " + inch);
        for (int i = 0; i < metric.size(); i++) {
          double expected = metres(metric.get(i));
          assertEquals(
              expected, metres(inch.get(i)), Math.abs(expected) * ROUNDED_TWICE, request::toString);
        }
        compared += metric.size();
      }
    }
    assertTrue(compared >= MANY, compared + " figures");
  }

  /** What was given and what is allowed are told as everything else; how a quantity may be written is not. */
  @Test
  void faultsSayTheSameInInches() throws Exception {
    List<String> metric = new ArrayList<>();
    int compared = 0;
    for (CodeRequest request : CodeRequest.all().toList()) {
      JsonNode faults = answer(request, "units=metric").path("errors");
      if (!request.ofCore() && request.request().isObject() && !faults.isEmpty()) {
        JsonNode inch = answer(request, "units=inch&format=text").path("errors");
        assertEquals(faults.findValuesAsText("code"), inch.findValuesAsText("code"));
        assertEquals(faults.findValuesAsText("pointer"), inch.findValuesAsText("pointer"));
        if (METRIC.matcher(inch.toString()).find()) {
          metric.add(inch.toString());
        }
        compared++;
      }
    }
    assertEquals(List.of(), metric);
    assertTrue(compared >= MANY, compared + " requests");
  }

  private static JsonNode answer(CodeRequest request, String query) throws Exception {
    return new ObjectMapper()
        .readTree(
            RunningServer.given()
                .contentType("application/json")
                .body(request.request().toString())
                .post("/v1/" + request.calculation() + "?" + query)
                .asString());
  }

  /** Tables have one decimal of a decibel. */
  @Test
  void besideTablesSentencesAreRoundedAsTheyAre() {
    Pattern finer = Pattern.compile("\\.\\d{2,}\\s+dB");
    assertTrue(finer.matcher(demoReview("json")).find(), "nothing to round");
    for (String page :
        List.of("text", "fitter.html", "json&findings=beside_tables&field=findings")) {
      assertEquals(
          List.of(),
          finer.matcher(demoReview(page)).results().map(MatchResult::group).toList(),
          page);
    }
  }

  private static String demoReview(String format) {
    Example plan =
        Example.all().filter(one -> one.path().endsWith("plan-review")).findFirst().orElseThrow();
    return RunningServer.given()
        .contentType("application/json")
        .body(plan.question().toString())
        .post("/v1/plan-review?format=" + format)
        .asString();
  }

  private static double metres(MatchResult figure) {
    return Double.parseDouble(figure.group(1).replace('−', '-')) * WORTH.get(figure.group(2));
  }

  private static List<MatchResult> figures(CodeRequest request, String units, Pattern pattern)
      throws Exception {
    List<MatchResult> figures = new ArrayList<>();
    for (JsonNode finding : answer(request, "units=" + units).path("findings")) {
      String said = finding.path("text").asText() + " " + finding.path("advice").asText();
      pattern.matcher(said).results().forEach(figures::add);
    }
    return figures;
  }
}
