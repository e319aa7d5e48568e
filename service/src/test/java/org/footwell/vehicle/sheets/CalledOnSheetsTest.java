package org.footwell.vehicle.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Shown;
import org.footwell.calculation.View;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.ModelledPlans;
import org.footwell.vehicle.PlanReview;
import org.footwell.vehicle.PlanReviewResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Findings on sheets call parts as the tables beside them do, and by their ids nowhere else than there. */
class CalledOnSheetsTest {

  private static final Path EXAMPLES = Path.of("../docs/examples");

  private static final ObjectMapper JSON = new ObjectMapper();

  /** Fewer would mean that no finding is about a part with a name of its own. */
  private static final int SOME = 4;

  static Stream<VehiclePlan> plans() throws Exception {
    List<VehiclePlan> plans = new ArrayList<>();
    for (String name : List.of("camper-van", "factory-estate", "low-budget-hatchback")) {
      String json = Files.readString(EXAMPLES.resolve(name + ".json"));
      plans.add(ModelledPlans.plan(JSON.readTree(json)));
      plans.add(ModelledPlans.plan(broken((ObjectNode) JSON.readTree(json))));
    }
    plans.add(ModelledPlans.plan(JSON.readTree(new PlanReview().card().example())));
    return plans.stream();
  }

  /** Drivers that hardly move and find no room, amplifiers that must not be loaded: each makes findings. */
  private static ObjectNode broken(ObjectNode plan) {
    plan.path("new_parts")
        .forEach(
            part -> {
              ((ObjectNode) part.path("driver")).put("xmax_mm", 0.5);
              ((ObjectNode) part).put("cut_out_mm", 140).put("mounting_depth_mm", 60);
            });
    plan.path("drivers")
        .forEach(
            one ->
                ((ObjectNode) one).putObject("opening").put("cut_out_mm", 60).put("depth_mm", 20));
    plan.path("amplifiers")
        .forEach(
            one -> one.path("outputs").forEach(out -> ((ObjectNode) out).put("minimum_ohm", 16)));
    return plan;
  }

  private static Answer<PlanReviewResult> answer(VehiclePlan plan, Reader reader) {
    return new Engine().answer(new PlanReview(), plan, false, Duration.ofSeconds(20), reader);
  }

  private static Reader sheets(String language) {
    return Reader.in(language).orElseThrow().told(Reader.Wording.ON_SHEETS);
  }

  /** Ids that the tables of the sheets have another word for. */
  private static Map<String, String> called(VehiclePlan plan) {
    Map<String, String> called = new TreeMap<>();
    plan.amplifiers().forEach(one -> called.put(one.id(), one.calledName()));
    plan.newParts().forEach(one -> called.put(one.id(), one.calledName()));
    plan.factoryParts().forEach(one -> called.put(one.id(), one.calledName()));
    plan.drivers().forEach(one -> called.put(one.id(), Names.spelt(one.id())));
    plan.channels().forEach(one -> called.put(one.id(), Names.spelt(one.id())));
    called.entrySet().removeIf(one -> one.getKey().equals(one.getValue()));
    return called;
  }

  private static String said(List<Finding> findings) {
    StringBuilder said = new StringBuilder();
    findings.forEach(one -> said.append(one.text()).append(' ').append(one.advice()).append('\n'));
    return said.toString();
  }

  /** Whether a word stands in a text, not as a part of another. */
  private static boolean has(String text, String word) {
    return Pattern.compile("(?<![\\w-])" + Pattern.quote(word) + "(?![\\w-])").matcher(text).find();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void noIdIsLeftWhereTheTablesHaveAName(VehiclePlan plan) {
    for (String language : Reader.languages()) {
      String told = said(answer(plan, sheets(language)).findings());
      assertEquals(
          List.of(),
          called(plan).keySet().stream().filter(id -> id.contains("_") && has(told, id)).toList(),
          told);
    }
  }

  @Test
  void theSheetsHaveTheNamesInstead() throws Exception {
    int named = 0;
    for (VehiclePlan plan : plans().toList()) {
      String ids = said(answer(plan, Reader.ANYONE).findings());
      Answer<PlanReviewResult> answer = answer(plan, sheets("en"));
      String told = said(answer.findings());
      String sheet = html("fitter.html", plan, answer);
      for (Map.Entry<String, String> one : called(plan).entrySet()) {
        if (one.getKey().contains("_") && has(ids, one.getKey())) {
          assertTrue(has(told, one.getValue()), () -> one + " in " + told);
          assertTrue(sheet.contains(one.getValue()), () -> one + " on the sheet");
          named++;
        }
      }
      for (String format : List.of("html", "fitter.html")) {
        String words = html(format, plan, answer).replaceAll("(?s)<svg.*?</svg>|<[^>]*>", " ");
        called(plan).keySet().stream()
            .filter(id -> id.contains("_"))
            .forEach(id -> assertTrue(!has(words, id), () -> id + " on " + format));
      }
    }
    assertTrue(named >= SOME, named + " names");
  }

  private static String html(String format, VehiclePlan plan, Answer<PlanReviewResult> answer) {
    View<VehiclePlan, PlanReviewResult> view =
        PlanSheets.VIEWS.stream()
            .filter(one -> one.format().equals(format))
            .findFirst()
            .orElseThrow();
    Reader reader = new Reader(Locale.ENGLISH, Reader.Units.METRIC);
    return new String(view.draw().apply(new Shown<>(plan, answer, reader)), StandardCharsets.UTF_8);
  }

  /** Text shows the answer as a program gets it, and so do findings beside it. */
  @ParameterizedTest
  @MethodSource("plans")
  void elsewhereTheyKeepTheirIds(VehiclePlan plan) {
    String sentences = said(answer(plan, Reader.ANYONE).findings());
    Reader tables = Reader.ANYONE.told(Reader.Wording.BESIDE_TABLES);
    String beside = said(answer(plan, tables).findings());
    for (String id : called(plan).keySet()) {
      assertEquals(has(sentences, id), has(beside, id), id);
    }
  }
}
