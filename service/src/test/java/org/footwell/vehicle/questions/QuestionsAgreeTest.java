package org.footwell.vehicle.questions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.Answers;
import org.footwell.Calculations;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.PlanReview;
import org.footwell.vehicle.questions.PlanQuestionsResult.Question;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The review and the single questions put to the same plan say the same where they say one thing. Every
 * calculation that a plan can pose is held to the review here, or says nothing that the review says too.
 */
class QuestionsAgreeTest {

  private static final Engine ENGINE = new Engine();
  private static final double SAME = 1e-9;

  /** What is one figure: a field of the answer, and the list of the review with its field. */
  private record Pair(String ofAnswer, String list, String ofLine) {}

  private static Pair pair(String ofAnswer, String list, String ofLine) {
    return new Pair(ofAnswer, list, ofLine);
  }

  private static Map.Entry<String, List<Pair>> held(String calculation, Pair... pairs) {
    return Map.entry(calculation, List.of(pairs));
  }

  /**
   * Fields are JSON Pointers. The line of the review is that of the place asked about; where a field of
   * the answer goes through a list, that of the entry's name.
   */
  private static final Map<String, List<Pair>> HELD =
      Map.ofEntries(
          held("wiring-load", pair("/result/load_ohm", "/channels", "/load_ohm")),
          held(
              "rail-match",
              pair("/result/clean_power_w", "/channels", "/clean_power_w"),
              pair("/result/limiter_rms_v", "/channels", "/limiter_rms_v"),
              pair("/result/limiter_peak_v", "/channels", "/limiter_peak_v")),
          held("gain-chain", pair("/result/target_v", "/channels", "/gain_target_v")),
          held(
              "amplifier-heat",
              pair("/result/total/sine/output_power_w", "/supply/0/amplifiers", "/clean_power_w")),
          held(
              "supply-cable",
              pair("/result/metric/area_mm2", "/cables", "/area_mm2"),
              pair("/result/metric/loop_ohm", "/cables", "/loop_ohm"),
              pair("/result/metric/ampacity_a", "/cables", "/ampacity_a"),
              pair("/result/metric/fuse_least_a", "/cables", "/fuse_least_a"),
              pair("/result/metric/fuse_largest_a", "/cables", "/fuse_largest_a"),
              pair("/result/metric/fuse_a", "/cables", "/fuse_a")),
          held(
              "crossover-plan",
              pair("/result/crossovers/0/lowest_hz", "/crossovers", "/lowest_hz"),
              pair("/result/crossovers/0/highest_hz", "/crossovers", "/highest_hz")),
          held("closed-box", pair("/request/power_w", "/drivers", "/clean_power_w")),
          held("vented-box", pair("/request/power_w", "/drivers", "/clean_power_w")),
          held("impedance-curve", pair("/result/lowest_modulus_ohm", "/channels", "/lowest_ohm")),
          held(
              "seat-delays",
              pair("/result/channels/*/flight_delay_ms", "/channels", "/flight_delay_ms")),
          held("seat-levels", pair("/request/sources/*/power_w", "/drivers", "/clean_power_w")),
          held(
              "driver-comparison",
              pair("/result/positions/*/after/amplifier_power_w", "/drivers", "/clean_power_w"),
              pair("/result/positions/*/change/mass_g", "/replacements", "/mass_change_g")));

  /** What says nothing that the review says too, and why. */
  private static final Map<String, String> APART =
      Map.of(
          "amplifier-ratings", "an amplifier by itself, at loads of its data sheet",
          "crossover-filters", "filters by themselves, without a driver",
          "driver-check", "a part by itself",
          "passive-network", "one branch by itself, not the finished loudspeaker",
          "sound-level", "one driver with the whole programme, before filters and trims",
          "supply-budget", "all channels at full drive, not with the settings of the plan");

  private static VehiclePlan plan(String name) {
    JsonNode sent = PlansUnderTest.NAMED.get(name);
    return ENGINE.bind(VehiclePlan.class, Trees.MAPPER.convertValue(sent, Object.class), false);
  }

  private static <Q extends Record, R extends Record> Answer<R> ask(
      Calculation<Q, R> calculation, String about, VehiclePlan plan) {
    return ENGINE.answer(
        calculation, new PlanDocument(), plan, about, false, Duration.ofSeconds(30), Reader.ANYONE);
  }

  /** Every question that is held to the review, of every plan. */
  static Stream<Arguments> questions() {
    return PlansUnderTest.NAMED.keySet().stream()
        .flatMap(
            name ->
                Answers.of(new PlanQuestions(Calculations::all), plan(name))
                    .result()
                    .questions()
                    .stream()
                    .filter(Question::answerable)
                    .filter(question -> HELD.containsKey(question.calculation()))
                    .map(question -> Arguments.of(name, question.calculation(), question.about())));
  }

  /** Pairs that a plan has had figures for. */
  private static final Set<Pair> COMPARED = new HashSet<>();

  @AfterAll
  static void everyPairHasHadFigures() {
    HELD.values().forEach(pairs -> assertTrue(COMPARED.containsAll(pairs), pairs::toString));
  }

  @ParameterizedTest(name = "{0} {1} {2}")
  @MethodSource("questions")
  void saysWhatTheReviewSays(String name, String id, String about) {
    VehiclePlan plan = plan(name);
    JsonNode answer = Trees.MAPPER.valueToTree(ask(Calculations.BY_ID.get(id).get(), about, plan));
    JsonNode review = Trees.MAPPER.valueToTree(Answers.of(new PlanReview(), plan).result());
    for (Pair pair : HELD.get(id)) {
      for (Figure figure : figures(answer, pair.ofAnswer(), about)) {
        JsonNode line = line(review.at(pair.list()), figure.of(), plan);
        if (line != null && !(id.equals("gain-chain") && heldBack(line))) {
          JsonNode reviewed = line.at(pair.ofLine());
          assertEquals(reviewed.isMissingNode(), figure.value().isMissingNode(), pair.toString());
          double expected = reviewed.asDouble();
          assertEquals(
              expected,
              figure.value().asDouble(),
              SAME * Math.max(1, Math.abs(expected)),
              pair + " " + figure.of());
          COMPARED.add(pair);
        }
      }
    }
  }

  /** A figure of an answer and the id of what it is about. */
  private record Figure(String of, JsonNode value) {}

  private static List<Figure> figures(JsonNode answer, String pointer, String about) {
    int star = pointer.indexOf("/*");
    if (star < 0) {
      return List.of(new Figure(about.substring(about.indexOf('/', 1) + 1), answer.at(pointer)));
    }
    String within = pointer.substring(star + 2);
    List<Figure> figures = new ArrayList<>();
    answer
        .at(pointer.substring(0, star))
        .forEach(entry -> figures.add(new Figure(entry.get("name").asText(), entry.at(within))));
    return figures;
  }

  /** The line of the review about an id, or null. */
  private static JsonNode line(JsonNode list, String id, VehiclePlan plan) {
    Optional<String> channel =
        plan.channels().stream()
            .filter(one -> id.equals(one.network()))
            .map(PlannedChannel::id)
            .findFirst();
    for (JsonNode line : list) {
      String own =
          line.has("upper")
              ? line.get("lower").asText() + "/" + line.get("upper").asText()
              : line.path(line.has("id") ? "id" : "driver").asText();
      if (own.equals(id) || channel.filter(own::equals).isPresent()) {
        return line;
      }
    }
    return null;
  }

  /** A gain that is held back for the drivers is not that of the chain by itself. */
  private static boolean heldBack(JsonNode line) {
    return line.path("gain_reduction_db").asDouble() != 0;
  }

  @Test
  void everyQuestionIsHeldToTheReviewOrSaysSomethingElse() {
    Set<String> declared =
        Calculations.all().stream()
            .filter(calculation -> calculation instanceof AskOfPlan<?>)
            .map(calculation -> calculation.card().id())
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> known = new TreeSet<>(HELD.keySet());
    known.addAll(APART.keySet());
    assertEquals(declared, known);
    assertTrue(HELD.keySet().stream().noneMatch(APART::containsKey));
  }
}
