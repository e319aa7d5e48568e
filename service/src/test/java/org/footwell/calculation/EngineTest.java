package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.footwell.calculation.text.Allowed;
import org.junit.jupiter.api.Test;

public class EngineTest {

  private static final Formula.Of2 QUOTIENT =
      Formula.of("quotient_ohm", "a/b", "ohm", Source.DEFINITION).with("a", "b", (a, b) -> a / b);

  public record Numbers(
      @Schema(description = "Said here") @NotNull Double a,
      @Schema(description = "Said here") @NotNull Double b) {}

  public record Quotient(@Schema(description = "Said here") double quotientOhm) {}

  public record Amp(
      @Schema(description = "Said here") Double gainDb,
      @Schema(description = "Said here") Double b) {}

  /** What a nested calculation is asked within. */
  public record Vehicle(
      @Schema(description = "Said here") List<Amp> channels,
      @Schema(description = "Said here") List<Amp> amplifiers) {}

  private static final Vehicle VEHICLE = new Vehicle(List.of(), List.of());

  private enum Remarks implements FindingCode {
    REQUIRED(Verdict.NOTE),
    DUPLICATE(Verdict.STOP),
    NOT_ALLOWED(Verdict.WARNING);

    private final Verdict level;

    Remarks(Verdict level) {
      this.level = level;
    }

    @Override
    public Verdict level() {
      return level;
    }
  }

  private static Calculation<Numbers, Quotient> calculation(
      BiFunction<Numbers, Run, Quotient> compute) {
    return calculation(Numbers.class, compute);
  }

  /** A calculation made of a lambda. */
  private static <Q extends Record> Calculation<Q, Quotient> calculation(
      Class<Q> type, BiFunction<Q, Run, Quotient> compute) {
    Card<Q, Quotient> card =
        Card.of("quotient", type, Quotient.class)
            .title("Quotient")
            .purpose("Divides.")
            .example("{}")
            .sources()
            .limits()
            .findings(Remarks.values())
            .build();
    return new Calculation<>() {
      @Override
      public Card<Q, Quotient> card() {
        return card;
      }

      @Override
      public Quotient compute(Q request, Run run) {
        return compute.apply(request, run);
      }
    };
  }

  private static final Calculation<Numbers, Quotient> DIVIDE =
      calculation((q, run) -> new Quotient(run.apply(QUOTIENT, q.a(), q.b())));

  private static <Q extends Record> Answer<Quotient> answer(
      Calculation<Q, Quotient> calculation, Q request, boolean workings) {
    return new Engine().answer(calculation, request, workings, Duration.ofSeconds(10));
  }

  @Test
  void workingsAreThereOnlyWhenAskedFor() {
    assertNull(answer(DIVIDE, new Numbers(6.0, 3.0), false).workings());
    Answer<Quotient> shown = answer(DIVIDE, new Numbers(6.0, 3.0), true);
    assertEquals(
        List.of(
            new Step(
                null,
                "quotient_ohm",
                "a/b",
                Map.of("a", 6.0, "b", 3.0),
                2.0,
                "ohm",
                Source.DEFINITION.citation())),
        shown.workings());
  }

  @Test
  void aStepThatIsNotFiniteIsRefusedByName() {
    Refused refused =
        assertThrows(Refused.class, () -> answer(DIVIDE, new Numbers(6.0, 0.0), false));
    assertEquals("not-finite", refused.faults().get(0).code());
    assertEquals(
        "The numbers given lead to no finite quotient_ohm: a/b with {a=6.0, b=0.0}.",
        refused.faults().get(0).detail());
  }

  @Test
  void aResultThatIsNotFiniteNeverGetsOut() {
    Calculation<Numbers, Quotient> careless = calculation((q, run) -> new Quotient(q.a() / q.b()));
    Refused refused =
        assertThrows(Refused.class, () -> answer(careless, new Numbers(0.0, 0.0), false));
    assertEquals("not-finite", refused.faults().get(0).code());
  }

  public record Quotients(@Schema(description = "Said here") List<Double> quotientsOhm) {}

  @Test
  void norDoesOneInAList() {
    Faults faults = new Faults();
    Shape.of(Quotients.class).requireFinite(new Quotients(List.of(1.0, Double.NaN)), faults);
    assertEquals("not-finite", faults.list().get(0).code());
  }

  @Test
  void aDoubleIsHeldAgainstItsBoundsAsADouble() {
    assertEquals(
        List.of("/list/1", "/list/2", "/single"),
        new TreeMap<>(faultsOf(new Bounded(0.1, List.of(0.3, 0.1, Double.NaN))))
            .keySet().stream().toList());
    assertEquals(Map.of(), faultsOf(new Bounded(0.2, List.of(0.2, 0.7))));
  }

  public record Bounded(
      @Schema(description = "Said here") @DecimalMin("0.2") Double single,
      @Schema(description = "Said here")
          List<@NotNull @DecimalMin("0.2") @DecimalMax("0.7") Double> list) {}

  private static Map<String, String> faultsOf(Record request) {
    Faults faults = new Faults();
    Shape.of(request.getClass()).check(request, faults);
    return faults.list().stream().collect(Collectors.toMap(Fault::pointer, Fault::code));
  }

  @Test
  void theVerdictIsTheWorstFindingAndFindingsComeWorstFirst() {
    Calculation<Numbers, Quotient> remarking =
        calculation(
            (q, run) -> {
              run.find(Remarks.REQUIRED).at("/a");
              run.find(Remarks.DUPLICATE).at("/b").given("x").value(1).limit(2);
              run.find(Remarks.NOT_ALLOWED).given(3).allowed(Allowed.fields(List.of("few")));
              run.find(Remarks.REQUIRED).at("/a");
              return new Quotient(1);
            });
    Answer<Quotient> answer = answer(remarking, new Numbers(1.0, 1.0), false);
    assertEquals(Verdict.STOP, answer.verdict());
    assertEquals(
        List.of(Verdict.STOP, Verdict.WARNING, Verdict.NOTE),
        answer.findings().stream().map(Finding::level).toList());
  }

  @Test
  void aNestedCalculationPointsIntoTheOuterRequest() {
    Calculation<Numbers, Quotient> inner =
        calculation(
            (q, run) -> {
              run.find(Remarks.NOT_ALLOWED)
                  .given(3)
                  .allowed(Allowed.fields(List.of("few")))
                  .at("/a");
              run.find(Remarks.NOT_ALLOWED)
                  .given(3)
                  .allowed(Allowed.fields(List.of("few")))
                  .at("/b");
              run.refuse(CoreFault.DUPLICATE).at("/b").given("x");
              return new Quotient(run.apply(QUOTIENT, q.a(), q.b()));
            });
    Numbers numbers = new Numbers(1.0, 1.0);
    Calculation<Vehicle, Quotient> outer =
        calculation(
            Vehicle.class,
            (q, run) -> {
              Rebase there = Rebase.to("/channels/3", "left").with("/b", "/amplifiers/0/gain_db");
              assertTrue(run.call(inner, numbers, there).isEmpty());
              assertTrue(run.call(inner, numbers, Rebase.to("/channels/4", "right")).isEmpty());
              return new Quotient(1);
            });
    Refused refused = assertThrows(Refused.class, () -> answer(outer, VEHICLE, false));
    assertEquals(
        List.of("/amplifiers/0/gain_db", "/channels/4"),
        refused.faults().stream().map(Fault::pointer).toList());
  }

  @Test
  void whatAPartWasBuiltFromHasItsFieldsUnderTheSameNames() {
    Calculation<Numbers, Quotient> inner =
        calculation(
            (q, run) -> {
              run.refuse(CoreFault.DUPLICATE).at("/a").given("x");
              run.refuse(CoreFault.DUPLICATE).at("/b").given("x");
              throw run.refused();
            });
    Calculation<Vehicle, Quotient> outer =
        calculation(
            Vehicle.class,
            (q, run) -> {
              Rebase there =
                  Rebase.to("/channels/3", "left").from("", "/amplifiers", "/amplifiers/0");
              assertTrue(run.call(inner, new Numbers(1.0, 1.0), there).isEmpty());
              return new Quotient(1);
            });
    Refused refused = assertThrows(Refused.class, () -> answer(outer, VEHICLE, false));
    assertEquals(
        List.of("/channels/3", "/amplifiers/0/b"),
        refused.faults().stream().map(Fault::pointer).toList());
  }

  @Test
  void findingsOfANestedCalculationNameTheirPart() {
    Calculation<Numbers, Quotient> inner =
        calculation(
            (q, run) -> {
              run.find(Remarks.NOT_ALLOWED)
                  .given(3)
                  .allowed(Allowed.fields(List.of("few")))
                  .at("/b");
              return new Quotient(1);
            });
    Numbers numbers = new Numbers(1.0, 1.0);
    Calculation<Vehicle, Quotient> outer =
        calculation(
            Vehicle.class,
            (q, run) ->
                run.call(
                        inner,
                        numbers,
                        Rebase.to("/channels/3", "left").with("/b", "/amplifiers/1"))
                    .orElseThrow());
    Finding finding = answer(outer, VEHICLE, false).findings().get(0);
    assertEquals("left", finding.subject());
    assertEquals("/amplifiers/1", finding.pointer());
  }

  @Test
  void aPlaceThatDoesNotExistIsAnErrorInTheProgram() {
    Calculation<Numbers, Quotient> astray =
        calculation(
            (q, run) -> {
              run.find(Remarks.NOT_ALLOWED)
                  .given(3)
                  .allowed(Allowed.fields(List.of("few")))
                  .at("/c");
              return new Quotient(1);
            });
    assertThrows(AssertionError.class, () -> answer(astray, new Numbers(1.0, 1.0), false));
    Calculation<Numbers, Quotient> inner = calculation((q, run) -> new Quotient(1));
    for (Rebase wrong :
        List.of(
            Rebase.to("/channel/3", "left"),
            Rebase.to("/channels/3", "left").with("/c", "/amplifiers/0"),
            Rebase.to("/channels/3", "left").with("/b", "/amplifiers/0/gain"))) {
      Calculation<Vehicle, Quotient> outer =
          calculation(
              Vehicle.class,
              (q, run) -> run.call(inner, new Numbers(1.0, 1.0), wrong).orElseThrow());
      assertThrows(AssertionError.class, () -> answer(outer, VEHICLE, false));
    }
  }

  @Test
  void aCalculationPastItsDeadlineIsEnded() {
    Calculation<Numbers, Quotient> slow =
        calculation(
            (q, run) -> {
              for (int i = 0; i < 1_000_000; i++) {
                run.checkDeadline();
              }
              return new Quotient(1);
            });
    assertThrows(
        DeadlinePassed.class,
        () -> new Engine().answer(slow, new Numbers(1.0, 1.0), false, Duration.ZERO));
  }

  @Test
  void exactlyOneOfSeveralAlternativesMustBeGiven() {
    Calculation<Numbers, Quotient> choosing =
        calculation(
            (q, run) -> {
              run.exactlyOneOf("", new TreeMap<>(Map.of("a", 1, "b", 2)));
              return new Quotient(1);
            });
    Refused refused =
        assertThrows(Refused.class, () -> answer(choosing, new Numbers(1.0, 1.0), false));
    assertEquals("Give exactly one of a, b.", refused.faults().get(0).detail());
  }
}
