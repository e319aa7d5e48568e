package org.footwell.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import org.footwell.Answers;
import org.footwell.acoustic.enclosure.ClosedBox;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.supply.SupplyCable;
import org.footwell.parts.StandardValues;
import org.junit.jupiter.api.Test;

/** The value that leads to a target: held against closed inverses, and told where there is none. */
class SolveTest {

  private static SolveRequestBuilder seek(String input, double from, double to) {
    return SolveRequestBuilder.builder().request(Map.of()).input(input).from(from).to(to);
  }

  private static SolveRequestBuilder x(double from, double to, double target) {
    return seek("x", from, to).output("y").target(target);
  }

  private static Answer<SolveResult> answer(
      DoubleFunction<Double> function, SolveRequestBuilder asked) {
    return Answers.of(new Solve<>(new Curve(function)), asked.build());
  }

  private static SolveResult result(DoubleFunction<Double> function, SolveRequestBuilder asked) {
    Answer<SolveResult> answer = answer(function, asked);
    assertEquals(List.of(), Answers.codes(answer));
    return answer.result();
  }

  private static String only(Answer<SolveResult> answer, String code) {
    List<Finding> found =
        answer.findings().stream().filter(one -> one.code().equals(code)).toList();
    assertEquals(1, found.size(), answer.findings()::toString);
    return found.get(0).text();
  }

  // Closed inverses.

  @Test
  void aCubeRootIsFoundToTheLastDigits() {
    SolveResult found = result(x -> x * x * x, x(0, 10, 20));
    assertEquals(Math.cbrt(20), found.value(), 1e-11);
    assertEquals(20, found.reached(), 1e-10);
    assertTrue(found.iterations() > 0 && found.iterations() < 30, found::toString);
    assertEquals(new SolveResult.Seen(65, 0, 0, 0.0, 0.0, 1000.0, 10.0), found.seen());
  }

  @Test
  void theSideAskedForIsKept() {
    for (double target : new double[] {0.1, 2.0 / 3, Math.PI, 7}) {
      assertTrue(result(Math::exp, x(-5, 5, target).side(Side.AT_LEAST)).reached() >= target);
      assertTrue(result(Math::exp, x(-5, 5, target).side(Side.AT_MOST)).reached() <= target);
    }
  }

  /** Decibels by hand: 10·lg(P) over the level of one watt. */
  @Test
  void thePowerForALevelIsThatOfTheClosedForm() {
    Map<String, Object> request =
        Map.of(
            "driver",
            Map.of("rated_ohm", 4, "sensitivity", Map.of("level_db_spl", 87, "basis", "one_watt")),
            "distance_m",
            1);
    SolveRequest asked =
        seek("power_w", 0.1, 1000).request(request).output("level_db_spl").target(100.0).build();
    Answer<SolveResult> answer = Answers.of(new Solve<>(new SoundLevel()), asked);
    assertEquals(Math.pow(10, 1.3), answer.result().value(), 1e-9);
    assertEquals(100, answer.result().reached(), 1e-9);
  }

  /** Small's closed box: Qtc = Qts·√(1 + Vas/V), so V = Vas/((Qtc/Qts)² − 1). */
  @Test
  void theBoxForAQtcIsThatOfTheClosedForm() {
    Map<String, Object> driver =
        Map.of(
            "rated_ohm",
            4,
            "re_ohm",
            3.4,
            "fs_hz",
            30,
            "qms",
            6,
            "qes",
            0.45,
            "vas_l",
            60,
            "sd_cm2",
            330);
    SolveRequest asked =
        seek("box.volume_l", 1, 500)
            .request(Map.of("driver", driver, "power_w", 10))
            .output("qtc")
            .target(0.707)
            .build();
    double qts = 6 * 0.45 / (6 + 0.45);
    Answer<SolveResult> answer = Answers.of(new Solve<>(new ClosedBox()), asked);
    assertEquals(
        60 / (Math.pow(0.707 / qts, 2) - 1), answer.result().value(), 1e-6, answer::toString);
  }

  /** Held against trying every size by itself. */
  @Test
  void theThinnestCableThatLosesAtMostSoMuchIsThatOfTryingAll() {
    Map<String, Object> request =
        Map.of(
            "supply_v",
            13.8,
            "current_a",
            60,
            "cable",
            Map.of(
                "one_way_m",
                5,
                "material",
                "copper",
                "insulation_temperature_c",
                105,
                "engine_space",
                false),
            "return_path",
            "cable",
            "permitted_drop_v",
            0.5,
            "fuse_distance_m",
            0.2);
    SolveRequest asked =
        seek("cable.area_mm2", 4, 95)
            .request(request)
            .series(StandardValues.CONDUCTORS)
            .output("metric.drop_v")
            .target(0.3)
            .side(Side.AT_MOST)
            .build();
    Solve<?, ?> solve = new Solve<>(new SupplyCable());
    double best =
        DoubleStream.of(StandardValues.CONDUCTORS.between(4, 95))
            .filter(area -> 2 * 5 * 60 * ohmPerMetreAt50(area) <= 0.3 * (1 + 1e-12))
            .min()
            .orElseThrow();
    assertEquals(best, Answers.of(solve, asked).result().value());
  }

  /** IEC 60228, Table 3, class 5 at 20 °C, with 0.393 % a kelvin to 50 °C. */
  private static double ohmPerMetreAt50(double areaMm2) {
    Map<Double, Double> ohmPerKm =
        Map.of(
            4.0, 4.95, 6.0, 3.30, 10.0, 1.91, 16.0, 1.21, 25.0, 0.780, 35.0, 0.554, 50.0, 0.386,
            70.0, 0.272, 95.0, 0.206);
    return ohmPerKm.get(areaMm2) / 1000 * (1 + 0.00393 * 30);
  }

  // Only certain values.

  @Test
  void wholeNumbersMultiplesSeriesAndListsAreTriedOneByOne() {
    DoubleFunction<Double> square = x -> x * x;
    assertEquals(
        5,
        result(square, seek("more", -3, 40).request(Map.of("x", 0)).output("y").target(27.0))
            .value());
    assertEquals(5.25, result(square, x(1, 40, 27).step(0.25)).value());
    assertEquals(5.1, result(square, x(1, 40, 27).series(StandardValues.E24)).value());
    assertEquals(
        5.6, result(square, x(1, 40, 27).series(StandardValues.E24).side(Side.AT_LEAST)).value());
    assertEquals(
        4, result(square, x(1, 40, 27).values(List.of(9.0, 4.0)).side(Side.AT_MOST)).value());
    // Three times 0.1 is no 0.3 in binary.
    assertEquals(0.3, result(square, x(0, 2, 0.09).step(0.1)).value());
  }

  @Test
  void noneOfThemOnTheSideAskedForIsToldWithTheNearest() {
    Answer<SolveResult> answer =
        answer(x -> x, x(1, 9, 20).series(StandardValues.R5).side(Side.AT_LEAST));
    assertNull(answer.result().value());
    assertEquals(
        "From 1 to 9 y goes from 1 to 6.3 and does not get to 20; the nearest is 6.3, at 6.3.",
        only(answer, "target-not-reached"));
  }

  // What a function may be instead of crossing its target once.

  @Test
  void aTargetOutOfReachIsToldWithWhatWasSeen() {
    Answer<SolveResult> answer = answer(x -> x * x, x(-2, 2, 9));
    assertEquals(Verdict.STOP, answer.verdict());
    assertNull(answer.result().value());
    assertEquals(
        "From −2 to 2 y goes from 0 to 4 and does not get to 9; the nearest is 4, at −2.",
        only(answer, "target-not-reached"));
  }

  @Test
  void severalCrossingsAreAllToldAndTheFirstIsTaken() {
    Answer<SolveResult> answer = answer(x -> (x - 1) * (x - 2) * (x - 4), x(0, 5.1, 0));
    assertEquals(
        List.of(1.0, 2.0, 4.0),
        answer.result().crossings().stream()
            .map(one -> Math.rint(1e9 * one.value()) / 1e9)
            .toList());
    assertEquals(1, answer.result().value(), 1e-9);
    assertTrue(only(answer, "several-values").startsWith("y gets to 0 at 3 values: "));
  }

  /** Both crossings lie within one of the 64 steps. */
  @Test
  void aPeakThatBarelyReachesTheTargetIsLookedAtClosely() {
    DoubleFunction<Double> peak = x -> 1 / (1 + Math.pow((x - 3.03) / 0.2, 2));
    Answer<SolveResult> answer = answer(peak, x(0, 10, 0.99));
    double half = 0.2 * Math.sqrt(1 / 0.99 - 1);
    assertEquals(3.03 - half, answer.result().crossings().get(0).value(), 1e-8);
    assertEquals(3.03 + half, answer.result().crossings().get(1).value(), 1e-8);
  }

  @Test
  void aFlatFunctionEitherSuitsEverywhereOrNowhere() {
    assertEquals(
        "y is 3 from 0 to 1: it does not depend on x there.",
        only(answer(x -> 3.0, x(0, 1, 4)), "output-does-not-change"));
    Answer<SolveResult> any = answer(x -> 3.0, x(0, 1, 3));
    assertEquals("y is 3 all the way from 0 to 1: any value does.", only(any, "any-value-does"));
    assertEquals(0, any.result().value());
  }

  @Test
  void aJumpOverTheTargetIsNoCrossing() {
    DoubleFunction<Double> step = x -> x < Math.E ? x : x + 10;
    for (Side side : Side.values()) {
      Answer<SolveResult> answer = answer(step, x(0, 10, 5).side(side));
      assertEquals(
          "At 2.718 y jumps from 2.718 to 12.72: no value gives 5.", only(answer, "output-jumps"));
      assertEquals(side == Side.AT_LEAST ? Math.E + 10 : Math.E, answer.result().reached(), 1e-6);
    }
  }

  @Test
  void aValueThatMeetsTheTargetGoesBeforeAJumpOverIt() {
    Answer<SolveResult> answer = answer(x -> x < 2 ? x + 10 : x, x(0, 10, 5));
    assertEquals(List.of(), Answers.codes(answer));
    assertEquals(5, answer.result().value(), 1e-9);
  }

  @Test
  void aPoleIsNoCrossingEither() {
    Answer<SolveResult> answer = answer(x -> 1 / (x - Math.E), x(0, 10, 0));
    assertTrue(only(answer, "output-jumps").startsWith("At 2.718 y jumps from \u2212"));
  }

  @Test
  void aFunctionThatBreaksOffIsToldWhereItDoes() {
    DoubleFunction<Double> broken = x -> x > 4 && x < 6 ? Curve.REFUSED : x;
    Answer<SolveResult> answer = answer(broken, x(0, 10, 5));
    assertNull(answer.result().value());
    assertTrue(
        only(answer, "output-breaks-off")
            .startsWith("Between 3.906 and 6.094 y goes from 3.906 to 6.094, with values between"));
    assertEquals(
        "13 of 65 values looked at cannot be answered, the first of them 4.063: not-allowed at /x.",
        only(answer, "values-refused"));
    assertEquals(13, answer.result().seen().refusedCount());
  }

  @Test
  void aValueBesideAGapIsFoundAllTheSame() {
    Answer<SolveResult> answer = answer(x -> x < 2 ? null : (Double) x, x(0, 10, 5));
    assertEquals(5, answer.result().value(), 1e-9);
    assertEquals(
        "At 13 of 65 values looked at there is no y, first at 0.", only(answer, "output-absent"));
  }

  @Test
  void whatIsRefusedEverywhereIsRefusedAsTheCalculationDoes() {
    List<Fault> faults =
        Answers.faults(new Solve<>(new Curve(x -> Curve.REFUSED)), x(0, 1, 3).build());
    assertEquals("/request/x", faults.get(0).pointer());
    assertEquals("not-allowed", faults.get(0).code());
  }

  // What cannot be asked.

  private static List<String> faults(Calculation<?, ?> subject, SolveRequestBuilder asked) {
    return Answers.faults(new Solve<>(subject), asked.build()).stream()
        .map(fault -> fault.pointer() + " " + fault.code())
        .toList();
  }

  @Test
  void everyFaultIsToldAtOnce() {
    Curve curve = new Curve(x -> x);
    assertEquals(
        List.of("/input unknown-input", "/output unknown-output", "/request/z unknown-field"),
        faults(curve, seek("a", 0, 1).request(Map.of("z", 1)).output("b").target(1.0)));
    assertEquals(
        List.of("/input not-a-number", "/output not-a-number"),
        faults(curve, seek("words", 0, 1).request(Map.of("x", 1)).output("words").target(1.0)));
    assertEquals(List.of("/to not-ascending"), faults(curve, x(2, 1, 0)));
    assertEquals(
        List.of("/series at-most-one-of"),
        faults(curve, x(1, 2, 0).step(1.0).series(StandardValues.E6)));
    assertEquals(List.of("/step too-many-points"), faults(curve, x(0, 100, 0).step(1e-3)));
    assertEquals(List.of("/from no-standard-value"), faults(curve, x(1.1, 1.4, 0).step(1.0)));
    assertEquals(
        List.of("/series no-standard-value"),
        faults(curve, x(1.1, 1.4, 0).series(StandardValues.R5)));
    assertEquals(
        List.of("/from not-allowed"), faults(curve, x(0, 1.4, 0).series(StandardValues.R5)));
  }
}
