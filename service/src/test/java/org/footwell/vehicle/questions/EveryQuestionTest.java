package org.footwell.vehicle.questions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.footwell.Answers;
import org.footwell.Calculations;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Shape;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.questions.PlanQuestionsResult.Question;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every question of the demo plan and of others, through the registry: what is said here holds for all of them. */
class EveryQuestionTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Engine ENGINE = new Engine();
  private static final Duration LONG = Duration.ofSeconds(30);
  private static final PlanDocument DOCUMENT = new PlanDocument();
  private static final Shape<VehiclePlan> SHAPE = Shape.of(VehiclePlan.class);

  /** A question of a plan. */
  record Posed(String plan, Question question) {
    JsonNode sent() {
      return PlansUnderTest.NAMED.get(plan);
    }

    @Override
    public String toString() {
      return plan + " " + question.address();
    }
  }

  private static VehiclePlan plan(JsonNode json) {
    return ENGINE.bind(VehiclePlan.class, MAPPER.convertValue(json, Object.class), false);
  }

  private static List<Question> questions(VehiclePlan plan) {
    return Answers.of(new PlanQuestions(Calculations::all), plan).result().questions();
  }

  private static Stream<Posed> all() {
    return PlansUnderTest.NAMED.entrySet().stream()
        .flatMap(
            named ->
                questions(plan(named.getValue())).stream()
                    .map(question -> new Posed(named.getKey(), question)));
  }

  static Stream<Posed> answerable() {
    return all().filter(posed -> posed.question().answerable());
  }

  static Stream<Posed> lacking() {
    return all().filter(posed -> !posed.question().answerable());
  }

  private static Answer<?> ask(Posed posed) {
    Question question = posed.question();
    return ask(
        Calculations.BY_ID.get(question.calculation()).get(), question.about(), plan(posed.sent()));
  }

  private static <Q extends Record, R extends Record> Answer<R> ask(
      Calculation<Q, R> calculation, String about, VehiclePlan plan) {
    return ENGINE.answer(calculation, DOCUMENT, plan, about, false, LONG, Reader.ANYONE);
  }

  @ParameterizedTest
  @MethodSource("answerable")
  void isAnsweredAsItsRequestIsAlone(Posed posed) throws IOException {
    Answer<?> ofPlan = ask(posed);
    Calculation<?, ?> calculation = Calculations.BY_ID.get(posed.question().calculation()).get();
    Answer<?> alone = alone(calculation, Trees.MAPPER.writeValueAsString(ofPlan.request()));
    assertSame(
        "", Trees.MAPPER.valueToTree(alone.result()), Trees.MAPPER.valueToTree(ofPlan.result()));
    assertEquals(Answers.codes(alone), Answers.codes(ofPlan));
    assertEquals(alone.verdict(), ofPlan.verdict());
    assertEquals(alone.safety(), ofPlan.safety());
  }

  private static <Q extends Record, R extends Record> Answer<R> alone(
      Calculation<Q, R> calculation, String request) throws IOException {
    Object untyped = MAPPER.readValue(request, Object.class);
    return Answers.of(calculation, ENGINE.bind(calculation.card().request(), untyped, false));
  }

  private static void assertSame(String at, JsonNode expected, JsonNode found) {
    if (expected.isDouble()) {
      double size = Math.max(1, Math.abs(expected.doubleValue()));
      assertEquals(expected.doubleValue(), found.doubleValue(), 1e-9 * size, at);
    } else if (expected.isContainerNode()) {
      assertEquals(expected.size(), found.size(), at);
      List<String> names = new ArrayList<>();
      expected.fieldNames().forEachRemaining(names::add);
      names.forEach(name -> assertSame(at + "/" + name, expected.get(name), found.get(name)));
      for (int i = 0; expected.isArray() && i < expected.size(); i++) {
        assertSame(at + "/" + i, expected.get(i), found.get(i));
      }
    } else {
      assertEquals(expected, found, at);
    }
  }

  @ParameterizedTest
  @MethodSource("answerable")
  void itsFindingsPointIntoThePlan(Posed posed) {
    JsonNode sent = posed.sent();
    ask(posed)
        .findings()
        .forEach(finding -> assertTrue(leads(sent, finding.pointer()), () -> finding.toString()));
  }

  /** To something that was sent, or to the absence of something in a place that was. */
  private static boolean leads(JsonNode sent, String pointer) {
    if (!sent.at(pointer).isMissingNode()) {
      return true;
    }
    String around = pointer.substring(0, pointer.lastIndexOf('/'));
    return SHAPE.has(pointer.substring(1).replace('/', '.')) && leads(sent, around);
  }

  @ParameterizedTest
  @MethodSource("lacking")
  void whatItLacksIsRefusedAtThePlacesThatTheListNames(Posed posed) {
    JsonNode sent = posed.sent();
    List<Fault> faults = assertThrows(Refused.class, () -> ask(posed)).faults();
    assertEquals(
        new TreeSet<>(posed.question().missing()),
        new TreeSet<>(faults.stream().map(Fault::pointer).toList()));
    for (String pointer : posed.question().missing()) {
      assertTrue(sent.at(pointer).isMissingNode(), pointer);
      assertTrue(leads(sent, pointer), pointer);
    }
  }

  @Test
  void everyCalculationThatCanBePutToAPlanIsPutToOneOfThem() {
    Set<String> declared = new TreeSet<>();
    Calculations.all().stream()
        .filter(calculation -> calculation instanceof AskOfPlan<?>)
        .forEach(calculation -> declared.add(calculation.card().id()));
    Set<String> asked = new TreeSet<>();
    all().forEach(posed -> asked.add(posed.question().calculation()));
    assertEquals(declared, asked);
    assertFalse(declared.isEmpty());
  }
}
