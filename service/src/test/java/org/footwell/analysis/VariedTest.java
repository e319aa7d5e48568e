package org.footwell.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Verdict;
import org.footwell.calculation.text.Reader;
import org.footwell.vehicle.PlanReview;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Rendering;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A varied request is the one that would be sent with the values in it, over the registry. */
class VariedTest {

  private static final Engine ENGINE = new Engine();
  private static final Duration LONG = Duration.ofSeconds(30);

  /** Fields tried of each example; a plan has hundreds. */
  private static final int MOST_FIELDS = 12;

  static Stream<Calculation<?, ?>> all() {
    return Calculations.all().stream();
  }

  /** What an answer says, however it was asked for. */
  private record Answered(
      List<Object> outputs, List<String> codes, Verdict verdict, List<Fault> faults) {}

  @Tag("long")
  @ParameterizedTest
  @MethodSource("all")
  void aVariedInputAnswersAsTheSameValueSent(Calculation<?, ?> calculation) {
    assertTrue(answersAlike(calculation) > 0, "nothing to vary in " + calculation.card().id());
  }

  /** How many of the varied requests are answered. */
  private static <Q extends Record, R extends Record> int answersAlike(
      Calculation<Q, R> calculation) {
    ObjectNode request = Requests.example(calculation);
    List<String> outputs = Requests.outputs(calculation);
    List<String> numbers = Requests.numbers(calculation, request);
    int answered = 0;
    int step = Math.max(1, numbers.size() / MOST_FIELDS);
    for (int i = 0; i < numbers.size(); i += step) {
      String path = numbers.get(i);
      Varied<Q, R> varied = varied(calculation, request, List.of(path), outputs);
      double usual = varied.sent(0) instanceof Number number ? number.doubleValue() : 1;
      for (double value : new double[] {usual, 1.04 * usual, -usual - 1, 2}) {
        Answered found = answered(varied.at(ENGINE, LONG, value));
        Answered sent = asSent(varied, Requests.with(request, path, value));
        assertEquals(sent, found, path + " " + value);
        answered += found.faults() == null ? 1 : 0;
      }
    }
    return answered;
  }

  private static Answered answered(Point point) {
    return new Answered(
        point.outputs(),
        point.codes(),
        point.verdict(),
        point.refused() == null ? null : point.refused().faults());
  }

  /** The way a POST goes. */
  private static <Q extends Record, R extends Record> Answered asSent(
      Varied<Q, R> varied, JsonNode request) {
    try {
      Answer<R> answer =
          new Endpoint<>(varied.subject(), ENGINE, LONG)
              .answer(Rendering.utf8(request.toString()), false, Reader.ANYONE)
              .answer();
      List<Object> outputs = new ArrayList<>();
      varied.outputs().forEach(place -> outputs.add(place.of(answer.result())));
      List<String> codes = answer.findings().stream().map(Finding::code).distinct().toList();
      return new Answered(outputs, codes, answer.verdict(), null);
    } catch (Refused refused) {
      return new Answered(null, null, null, refused.faults());
    }
  }

  private static <Q extends Record, R extends Record> Varied<Q, R> varied(
      Calculation<Q, R> calculation, JsonNode request, List<String> inputs, List<String> outputs) {
    Faults faults = new Faults();
    var made = made(calculation, request, inputs, outputs, faults);
    assertEquals(List.of(), faults.list());
    return made;
  }

  private static <Q extends Record, R extends Record> Varied<Q, R> made(
      Calculation<Q, R> calculation,
      JsonNode request,
      List<String> inputs,
      List<String> outputs,
      Faults faults) {
    return Varied.of(
            calculation,
            Requests.untyped(request),
            said("/inputs/", inputs),
            said("/outputs/", outputs),
            faults)
        .orElse(null);
  }

  private static List<Said> said(String at, List<String> paths) {
    return IntStream.range(0, paths.size()).mapToObj(i -> new Said(paths.get(i), at + i)).toList();
  }

  private static List<String> faults(
      Calculation<?, ?> calculation, List<String> inputs, List<String> outputs) {
    Faults faults = new Faults();
    made(calculation, Requests.example(calculation), inputs, outputs, faults);
    return faults.list().stream().map(one -> one.pointer() + ": " + one.detail()).toList();
  }

  @Test
  void everyWrongPathIsToldWithTheNearestThatLeadsSomewhere() {
    assertEquals(
        List.of(
            "/inputs/0: powr_w leads to no single value of the request. Did you mean power_w?",
            "/inputs/1: rated_ohm leads to no single value of the request."
                + " Did you mean driver.rated_ohm?",
            "/inputs/2: driver leads to no single value of the request."
                + " Did you mean driver.rated_ohm?",
            "/inputs/4: /power_w is used more than once.",
            "/outputs/0: level leads to no single value of the result."
                + " Did you mean level_dba?"),
        faults(
            new SoundLevel(),
            List.of("powr_w", "rated_ohm", "driver", "power_w", "/power_w"),
            List.of("level")));
  }

  @Test
  void entriesOfAPlanAreFoundByIndexAndById() {
    PlanReview review = new PlanReview();
    ObjectNode plan = Requests.example(review);
    String id = plan.at("/channels/0/id").asText();
    Varied<?, ?> varied =
        varied(
            review,
            plan,
            List.of("channels." + id + ".cable.one_way_m"),
            List.of("channels." + id + ".load_ohm", "/channels/0/load_ohm"));
    assertEquals("/channels/0/cable/one_way_m", varied.inputs().get(0).pointer());
    Point point = varied.at(ENGINE, LONG, 6.0);
    assertEquals(point.outputs().get(1), point.outputs().get(0));
    assertTrue(point.number(0) > 0);
  }

  @Test
  void whatNoValueMendsIsToldOnceAndInTheRequest() {
    SoundLevel level = new SoundLevel();
    ObjectNode request = Requests.example(level).put("voltage_v", 3).put("crest_factor_db", -1);
    Varied<?, ?> varied = varied(level, request, List.of("distance_m"), List.of("level_db_spl"));
    Faults faults = new Faults();
    varied.refuseWhatNoneMends(List.of(new Object[] {-1.0}, new Object[] {-2.0}), faults);
    assertEquals(
        List.of("/request/crest_factor_db not-allowed", "/request exactly-one-of"),
        faults.list().stream().map(one -> one.pointer() + " " + one.code()).toList());
  }
}
