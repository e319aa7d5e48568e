package org.footwell.analysis.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.Committed;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.DeadlinePassed;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Verdict;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ToleranceTest {

  private static final String LEVEL =
      """
      {"request": {"driver": {"rated_ohm": 4, "sensitivity": {"level_db_spl": 90,
       "basis": "one_watt"}}, "power_w": 50, "distance_m": 1.5},
       "usual_tolerances": true, "outputs": ["level_db_spl"], %s}
      """;

  @Test
  void theSameSeedGivesTheSameAnswerHoweverManyThreadsThereAre() throws Exception {
    String asked = LEVEL.formatted("\"indices\": true, \"sample_count\": 500, \"seed\": 7");
    Answer<ToleranceResult> one = in(1, asked);
    assertEquals(one, in(4, asked));
    assertNotEquals(one, in(1, asked.replace("\"seed\": 7", "\"seed\": 8")));
  }

  private static Answer<ToleranceResult> in(int threads, String asked)
      throws InterruptedException, ExecutionException {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(() -> Asking.of("sound-level", asked)).get();
    } finally {
      pool.shutdown();
    }
  }

  @Test
  void indicesTellWhatEachInputMakesOfTheVariance() {
    OutputBudget level =
        Asking.of("sound-level", LEVEL.formatted("\"indices\": true")).result().outputs().get(0);
    double sum = 0;
    for (OutputDriver driver : level.drivers()) {
      // Close to linear: alone and with others is the same, and the squared correlation too.
      assertEquals(driver.firstOrder().value(), driver.total().value(), 0.02);
      assertEquals(
          Math.pow(driver.rankCorrelation().value(), 2), driver.firstOrder().value(), 0.05);
      sum += driver.firstOrder().value();
    }
    assertEquals(1, sum, 0.03);
  }

  @Test
  void whatWorksBothWaysIsFoundByIndicesAlone() {
    FourNumbers square = new FourNumbers(q -> q.a() * q.a() + 0.1 * q.b());
    String asked =
        """
        {"request": {"a": 0, "b": 0, "c": 0, "d": 0}, "outputs": ["y"], "indices": %s, "inputs": [
         {"path": "a", "plus_minus": 1, "distribution": "uniform"},
         {"path": "b", "plus_minus": 1, "distribution": "uniform"}]}
        """;
    Answer<ToleranceResult> with = Asking.of(square, asked.formatted(true));
    assertEquals("a", with.result().outputs().get(0).drivers().get(0).input());
    assertEquals(
        "y 0.33 ± 0.47, in 90 of 100 cases: a drives that most.", with.findings().get(0).text());
    assertEquals(
        "Measure a next: known exactly, it leaves y ± 0.089.", with.findings().get(0).advice());
    Answer<ToleranceResult> without = Asking.of(square, asked.formatted(false));
    assertEquals("b", without.result().outputs().get(0).drivers().get(0).input());
  }

  @Test
  void whatNeitherRisesNorFallsIsSaidSo() {
    FourNumbers square = new FourNumbers(q -> q.a() * q.a());
    Answer<ToleranceResult> answer =
        Asking.of(
            square,
            """
            {"request": {"a": 0, "b": 0, "c": 0, "d": 0}, "inputs": [
             {"path": "a", "plus_minus": 1, "distribution": "uniform"}]}
            """);
    assertEquals(List.of("no-input-stands-out"), codes(answer));
    OutputBudget same = answer.result().outputs().get(1);
    assertEquals(List.of(), same.drivers(), "what does not change is driven by nothing");
    assertEquals(0, same.deviation());
  }

  @Test
  void inputsThatDoAsMuchAreNotTakenForASequence() {
    String inputs = "{\"path\": \"%s\", \"plus_minus\": 1}";
    Answer<ToleranceResult> answer =
        Asking.of(
            FourNumbers.SUM,
            "{\"request\": {\"a\": 0, \"b\": 0, \"c\": 0, \"d\": 0}, \"sample_count\": 200, \"inputs\": ["
                + Stream.of("a", "b", "c").map(inputs::formatted).collect(Collectors.joining(","))
                + "]}");
    assertEquals(List.of("measure-one-of"), codes(answer));
    assertEquals(
        List.of(1, 1, 1),
        answer.result().outputs().get(0).drivers().stream().map(OutputDriver::rank).toList());
  }

  /** Bounds of this field are -1000 and 1000: four tenths of 999 ± 5 lie beyond. */
  @Test
  void whatIsBeyondTheBoundsIsRefusedAndCountedAndNotMovedToThem() {
    Answer<ToleranceResult> answer =
        Asking.of(
            FourNumbers.SUM,
            """
            {"request": {"a": 999, "b": 0, "c": 0, "d": 0}, "sample_count": 1000,
             "inputs": [{"path": "a", "plus_minus": 5, "distribution": "uniform"}]}
            """);
    ToleranceResult result = answer.result();
    assertEquals(0.4, result.verdicts().refused(), 0.002);
    assertEquals(List.of(new RefusedRuns("/a", "not-allowed", 400)), result.refused());
    OutputBudget y = result.outputs().get(0);
    assertEquals(600, y.answeredCount());
    assertEquals(997, y.mean(), 0.02);
    assertEquals(999.7, y.p95(), 0.02);
    Finding refused = answer.findings().get(0);
    assertEquals("samples-refused", refused.code());
    assertEquals("/request/a", refused.pointer());
    assertEquals(Verdict.WARNING, answer.verdict());
  }

  @Test
  void whereHardlyAnythingCanBeAnsweredThereAreNoFigures() {
    FourNumbers never = new FourNumbers(q -> q.a() == 0 ? 1 : Double.NaN);
    assertEquals(
        "too-few-answered",
        assertThrows(
                org.footwell.calculation.Refused.class,
                () ->
                    Asking.of(
                        never,
                        """
                        {"request": {"a": 0, "b": 0, "c": 0, "d": 0},
                         "inputs": [{"path": "a", "plus_minus": 5}]}
                        """))
            .faults()
            .get(0)
            .code());
  }

  /** 85 dBA for eight hours is the limit of the exposure directive; the level is known to 2 dB. */
  @Test
  void aVerdictThatHangsOnATolerance() {
    String asked =
        """
        {"request": {"periods": [{"level_dba": %s, "duration_h": 8}]},
         "inputs": [{"path": "periods.0.level_dba", "plus_minus": 2}]}
        """;
    Answer<ToleranceResult> far = Asking.of("sound-exposure", asked.formatted(70));
    assertTrue(far.findings().stream().noneMatch(one -> one.code().equals("verdict-at-risk")));
    Answer<ToleranceResult> near = Asking.of("sound-exposure", asked.formatted(84));
    double stop = near.result().verdicts().worseThan(near.result().stated());
    Finding risk = near.findings().get(0);
    assertEquals("verdict-at-risk", risk.code(), near::toString);
    assertEquals(100 * stop, risk.value(), 1e-9);
    // Beyond 85 is a deviation of 1 dB, 0.98 of the standard one: 16.4 of 100.
    assertEquals(16.4, risk.value(), 0.3);
    ToleranceResult.VerdictShares all = near.result().verdicts();
    assertEquals(1, all.ok() + all.note() + all.warning() + all.stop() + all.refused(), 1e-12);
  }

  @Test
  void everythingThatIsWrongIsToldAtOnce() {
    List<Fault> faults =
        Asking.faults(
            "sound-level",
            """
            {"request": {"driver": {"rated_ohm": 4, "sensitivity": {"level_db_spl": 90,
             "basis": "one_watt"}, "coil_count": 1}, "power_w": -50, "distance_m": 1.5},
             "outputs": ["level_db_sp", "limits.holds"], "sample_count": 100000, "indices": true,
             "inputs": [{"path": "driver.sensitivity.level", "plus_minus": 1},
             {"path": "power_w", "plus_minus": 1}, {"path": "/power_w", "plus_minus": 2},
             {"path": "driver.sensitivity.basis", "plus_minus": 2},
             {"path": "road_noise_dba", "plus_minus": 2}]}
            """);
    Map<String, List<String>> byPlace =
        faults.stream()
            .collect(
                Collectors.groupingBy(
                    Fault::pointer,
                    TreeMap::new,
                    Collectors.mapping(Fault::code, Collectors.toList())));
    assertEquals(
        "{/inputs/0/path=[unknown-input], /inputs/2/path=[duplicate],"
            + " /inputs/3/path=[has-no-tolerance], /inputs/4/path=[not-stated],"
            + " /outputs/0=[unknown-output], /outputs/1=[not-a-number],"
            + " /request/driver/coil_count=[unknown-field], /sample_count=[too-many-runs]}",
        byPlace.toString());
  }

  @Test
  void negativeTolerancesBothFormsAndNone() {
    List<Fault> faults =
        Asking.faults(
            "sound-level",
            LEVEL.formatted(
                """
                "inputs": [{"path": "power_w", "plus_minus": -1},
                {"path": "distance_m", "plus_minus": 1, "plus_minus_percent": 2},
                {"path": "distance_m"}, {"path": "power_w", "plus_minus_percent": 0}]
                """));
    assertEquals(
        List.of(
            "/inputs/0/plus_minus not-allowed",
            "/inputs/1 exactly-one-of",
            "/inputs/2 exactly-one-of",
            "/inputs/3/plus_minus_percent not-allowed"),
        faults.stream().map(one -> one.pointer() + " " + one.code()).sorted().toList());
  }

  @Test
  void aPercentageOfZeroAndNothingUncertain() {
    assertEquals(
        List.of("percent-of-zero"),
        Asking.faults(
                "sound-level",
                """
                {"request": {"driver": {"rated_ohm": 4, "sensitivity": {"level_db_spl": 90,
                 "basis": "one_watt"}}, "power_w": 50, "road_noise_dba": 0},
                 "inputs": [{"path": "road_noise_dba", "plus_minus_percent": 5}]}
                """)
            .stream()
            .map(Fault::code)
            .toList());
    assertEquals(
        List.of("nothing-uncertain"),
        Asking.faults(
                "equal-loudness",
                "{\"request\": {\"tuned_phon\": 80, \"listening_phon\": 60}, \"usual_tolerances\": true}")
            .stream()
            .map(Fault::code)
            .toList());
  }

  @Test
  void whatIsTooMuchSaysWhatFits() {
    String much = LEVEL.formatted("\"indices\": true, \"sample_count\": 30000");
    List<Fault> faults = Asking.faults("sound-level", much);
    assertEquals(List.of("too-many-runs"), faults.stream().map(Fault::code).toList());
    // Three inputs with a usual tolerance, so five blocks.
    assertEquals("at most 20000", faults.get(0).allowed());
    assertEquals(
        100_000, Asking.of("sound-level", much.replace("30000", "20000")).result().runCount());
  }

  @Test
  void aPlanHasManyNumbers() throws IOException {
    String usual = "\"usual_tolerances\": true";
    List<Fault> draws = Asking.faults("plan-review", planned(usual + ", \"sample_count\": 100000"));
    assertEquals(List.of("too-many-draws"), draws.stream().map(Fault::code).toList());
    assertEquals("at most " + 1_000_000 / 131, draws.get(0).allowed());
    String one = "{\"path\": \"seats.driver.position.x_m\", \"plus_minus\": 0.1}";
    String inputs = String.join(",", Collections.nCopies(1000, one));
    assertTrue(
        Asking.faults("plan-review", planned(usual + ", \"inputs\": [" + inputs + "]")).stream()
            .anyMatch(fault -> fault.code().equals("too-many-uncertain")));
  }

  /** Each block loses runs of its own; what is left in all of them still tells. */
  @Test
  void indicesAreThoseOfTheSamplesAnsweredInEveryBlock() {
    FourNumbers seldom =
        new FourNumbers(q -> q.a() + q.b() + q.c() + q.d() > -1 ? q.a() : Double.NaN);
    OutputBudget y =
        Asking.of(
                seldom,
                """
                {"request": {"a": 0, "b": 0, "c": 0, "d": 0}, "indices": true, "sample_count": 200,
                 "inputs": [{"path": "a", "plus_minus": 1}, {"path": "b", "plus_minus": 900},
                 {"path": "c", "plus_minus": 900}, {"path": "d", "plus_minus": 900}]}
                """)
            .result()
            .outputs()
            .get(0);
    assertTrue(y.answeredCount() > 80 && y.answeredCount() < 120, y::toString);
    assertEquals("a", y.drivers().get(0).input());
    assertTrue(y.drivers().get(0).firstOrder().high() >= 1, y::toString);
  }

  @Test
  void whatIsWrongWithTheRequestAsStatedIsToldInItsPlace() {
    List<Fault> faults =
        Asking.faults(
            "passive-network",
            """
            {"request": %s, "usual_tolerances": true}
            """
                .formatted(
                    Calculations.BY_ID
                        .get("passive-network")
                        .get()
                        .card()
                        .example()
                        .replaceFirst("\"re_ohm\": *[\\d.]+", "\"re_ohm\": 5000")));
    assertTrue(faults.get(0).pointer().startsWith("/request/"), faults::toString);
  }

  @Test
  void timeThatHasRunOutEndsIt() {
    assertThrows(
        DeadlinePassed.class,
        () ->
            Asking.within(
                Duration.ofMillis(5), "plan-review", planned("\"usual_tolerances\": true")));
  }

  @Test
  void howManySamplesThereIsTimeForIsTold() throws IOException {
    Refused refused =
        assertThrows(
            Refused.class,
            () ->
                Asking.within(Duration.ofSeconds(1), "seat-levels", asked("seat-levels", 100_000)));
    Fault fault = refused.faults().get(0);
    assertEquals("out-of-time", fault.code());
    assertEquals("/sample_count", fault.pointer());
    int fitting = Integer.parseInt(fault.allowed().replaceAll("\\D", ""));
    assertTrue(fitting >= ToleranceRequest.LEAST_COUNT && fitting < 100_000, fault::toString);
  }

  private static String asked(String id, int samples) {
    return """
        {"request": %s, "inputs": [{"path": "cabin.length_m", "plus_minus_percent": 5}],
         "sample_count": %d}
        """
        .formatted(Calculations.BY_ID.get(id).get().card().example(), samples);
  }

  static String planned(String rest) throws IOException {
    String plan = Files.readString(Committed.PROJECT.resolve("docs/examples/camper-van.json"));
    return "{\"request\": " + plan + ", \"outputs\": [\"level_db_spl\"], " + rest + "}";
  }

  @Test
  void onAPlanTheNextMeasurementIsNamed() throws IOException {
    Answer<ToleranceResult> answer =
        Asking.of(
            "plan-review",
            planned(
                """
                "sample_count": 128, "usual_tolerances": true, "inputs": [
                {"path": "new_parts.coaxial_13.driver.sensitivity.level_db_spl", "plus_minus": 4}]
                """));
    assertEquals("measure-first", answer.findings().get(0).code());
    String advice = answer.findings().get(0).advice();
    assertTrue(
        advice.startsWith("Measure new_parts.coaxial_13.driver.sensitivity.level_db_spl next"),
        advice);
    List<ToleranceResult.SampledInput> inputs = answer.result().inputs();
    assertNull(inputs.get(0).assumed(), "what is stated is not assumed");
    assertTrue(inputs.size() > 100, "a plan has many numbers: " + inputs.size());
    assertEquals(
        inputs.size(),
        inputs.stream().map(ToleranceResult.SampledInput::path).distinct().count(),
        "each once");
  }

  /** Every calculation whose example has a number of a usual tolerance has an error budget. */
  @Tag("long")
  @TestFactory
  Stream<DynamicTest> everyCalculationHasAnErrorBudget() {
    return Calculations.all().stream()
        .map(one -> dynamicTest(one.card().id(), () -> assertHasBudget(one)));
  }

  private static void assertHasBudget(Calculation<?, ?> subject) {
    String asked =
        "{\"request\": "
            + subject.card().example()
            + ", \"usual_tolerances\": true, \"sample_count\": 100";
    List<Fault> faults = Asking.faults(subject, asked + "}");
    if (faults.stream().anyMatch(one -> one.pointer().equals("/outputs"))) {
      String first =
          Shape.of(subject.card().result()).columns().stream()
              .filter(column -> column.type() == Double.class || column.type() == double.class)
              .findFirst()
              .orElseThrow()
              .path()
              .replace("*", "0");
      faults = Asking.faults(subject, asked + ", \"outputs\": [\"" + first + "\"]}");
    }
    List<String> codes = faults.stream().map(Fault::code).distinct().toList();
    assertTrue(codes.isEmpty() || codes.equals(List.of("nothing-uncertain")), faults::toString);
  }

  private static List<String> codes(Answer<?> answer) {
    return answer.findings().stream().map(Finding::code).toList();
  }
}
