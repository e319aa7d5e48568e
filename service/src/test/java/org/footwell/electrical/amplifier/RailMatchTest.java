package org.footwell.electrical.amplifier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.amplifier.RailMatchResult.AtSupply;
import org.footwell.electrical.amplifier.RailMatchResult.LimitedBy;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Rails;
import org.footwell.parts.Ratings;
import org.junit.jupiter.api.Test;

class RailMatchTest {

  private static final RailMatch RAIL_MATCH = new RailMatch();

  @Test
  @SuppressWarnings("unchecked")
  void theExampleOfTheMethodPage() throws JsonProcessingException {
    Map<String, Object> example =
        new ObjectMapper().readValue(RAIL_MATCH.card().example(), Map.class);
    Engine engine = new Engine();
    RailMatchRequest request = engine.bind(RailMatchRequest.class, example, false);
    Answer<RailMatchResult> answer =
        engine.answer(RAIL_MATCH, request, false, Duration.ofSeconds(5));
    RailMatchResult result = answer.result();
    assertEquals(22.6766, result.openCircuitV(), 5e-5);
    assertEquals(0.535322, result.sagOhm(), 5e-7);
    assertEquals(19.4267, result.voltageV(), 5e-5);
    assertEquals(117.937, result.cleanPowerW(), 5e-4);
    assertEquals(27.4736, result.peakVoltageV(), 5e-5);
    assertEquals(8.5855, result.peakCurrentA(), 5e-5);
    assertEquals(-0.0753, result.headroomDb(), 5e-5);
    assertEquals(21.9089, result.limiterRmsV(), 5e-5);
    assertEquals(result.peakVoltageV(), result.limiterPeakV());
    assertEquals(RatingsFit.Look.ORDINARY, result.character());
    assertNull(result.residualRmsDb());
    assertNull(result.limitedBy());
    assertEquals(Verdict.OK, answer.verdict());
  }

  @Test
  void railsGiveTheSineThatFitsBetweenThem() {
    RailMatchResult result = Requests.result(Requests.of(4, Requests.rails(30, 2, null, 0)));
    assertEquals(98, result.cleanPowerW(), 1e-9); // 28²/(2·4)
    assertEquals(28, result.peakVoltageV(), 1e-9);
    assertEquals(7, result.peakCurrentA(), 1e-9);
    assertEquals(LimitedBy.VOLTAGE, result.limitedBy());
    assertEquals(98, result.cleanPowerLowW(), 1e-9);
    assertEquals(98, result.cleanPowerHighW(), 1e-9);
    assertNull(result.character());
  }

  @Test
  void aBridgeDoublesSwingDropAndSagAndEachHalfSeesHalfTheLoad() {
    RailMatchResult result = Requests.result(Requests.bridged(8, Requests.rails(30, 2, null, 0.5)));
    assertEquals(56.0 * 8 / 9, result.peakVoltageV(), 1e-9);
    assertEquals(154.8642, result.cleanPowerW(), 5e-5);
    assertEquals(1, result.sagOhm(), 0);
    assertEquals(4, result.halfLoadOhm(), 0);
  }

  @Test
  void aBridgeDoesNotDoubleTheCurrentLimit() {
    Answer<RailMatchResult> answer =
        Requests.answer(Requests.bridged(4, Requests.rails(30, 2, 5.0, 0)));
    assertEquals(50, answer.result().cleanPowerW(), 1e-9); // 5²·4/2
    assertEquals(5, answer.result().peakCurrentA(), 1e-9);
    assertEquals(LimitedBy.CURRENT, answer.result().limitedBy());
    assertEquals(List.of("current-limit-first"), Answers.codes(answer));
    assertEquals(14, answer.findings().get(0).value(), 1e-9); // 56 V into 4 ohm
    assertEquals(5, answer.findings().get(0).limit(), 0);
  }

  @Test
  void aSingleSupplyBridgePeaksAtSupplyMinusDropAndSoAtEverySupply() {
    Rails rails = new Rails(14.4, 14.4, Rails.Kind.SINGLE_SUPPLY_BRIDGE, 2.0, null, null);
    RailMatchResult result = Requests.result(Requests.of(4, rails));
    assertEquals(19.22, result.cleanPowerW(), 1e-9); // 12.4²/8
    AtSupply lowest = result.atSupply().get(0);
    assertEquals(11, lowest.supplyV(), 0);
    assertEquals(10.125, lowest.cleanPowerW(), 1e-9); // 9²/8
    AtSupply highest = result.atSupply().get(6);
    assertEquals(14.4, highest.supplyV(), 0);
    assertEquals(result.cleanPowerW(), highest.cleanPowerW(), 1e-9);
    assertNull(highest.headroomDb());
  }

  @Test
  void aCurrentLimitStopsActingWhenTheSupplySinks() {
    RailMatchResult result = Requests.result(Requests.of(4, Requests.rails(14.4, 0, 3.0, 0)));
    assertEquals(18, result.cleanPowerW(), 1e-9); // 3²·4/2
    assertEquals(18, result.atSupply().get(3).cleanPowerW(), 1e-9); // 12.6 V would give 19.8 W
    assertEquals(15.125, result.atSupply().get(0).cleanPowerW(), 1e-9); // 11²/8
  }

  @Test
  void railsThatSinkToTheDropGiveNothing() {
    RailMatchRequest request =
        new Match()
            .loadOhm(4.0)
            .rails(new Rails(14.4, 14.4, null, 12.0, null, null))
            .driver(Requests.driver(1.0, 4.0))
            .build();
    AtSupply at11 = Requests.result(request).atSupply().get(0);
    assertEquals(0, at11.cleanPowerW(), 0);
    assertNull(at11.headroomDb());
  }

  @Test
  void regulatedRailsStayWhateverTheSupply() {
    RailMatchRequest request =
        new Match()
            .loadOhm(4.0)
            .rails(Requests.rails(30, 2, null, 0))
            .supplyRegulated(true)
            .build();
    Requests.result(request).atSupply().forEach(at -> assertEquals(98, at.cleanPowerW(), 1e-9));
  }

  @Test
  void anAmplifierOfATwentyFourVoltVehicleIsShownAtTwiceTheVoltages() {
    Rails rails = new Rails(30.0, 28.0, null, 2.0, null, null);
    List<AtSupply> atSupply = Requests.result(Requests.of(4, rails)).atSupply();
    assertEquals(22, atSupply.get(0).supplyV(), 0);
    assertEquals(28.8, atSupply.get(6).supplyV(), 0);
  }

  @Test
  void aBridgeIsNotBridgedAgain() {
    Ratings ratings = Requests.ratings(Ratings.Basis.CLEAN, false, true, 4, 20, 2, 35);
    assertEquals("bridge-of-bridges", Requests.onlyFault(Requests.bridged(4, ratings)).code());
    Ratings twice = Requests.ratings(Ratings.Basis.CLEAN, true, true, 4, 20, 2, 35);
    assertEquals("/amplifier/ratings/bridged", Requests.onlyFault(Requests.of(4, twice)).pointer());
    Rails rails = new Rails(14.4, 14.4, Rails.Kind.SINGLE_SUPPLY_BRIDGE, 2.0, null, null);
    assertEquals("/bridged", Requests.onlyFault(Requests.bridged(4, rails)).pointer());
  }

  @Test
  void aRailThatTheDropEatsUpIsRefused() {
    Fault fault = Requests.onlyFault(Requests.of(4, Requests.rails(3, 3, null, 0)));
    assertEquals("not-ascending", fault.code());
    assertEquals("/amplifier/rails/rail_v", fault.pointer());
  }

  @Test
  void railsAndRatingsExcludeEachOther() {
    RailMatchRequest both =
        new Match()
            .loadOhm(4.0)
            .rails(Requests.rails(30, 2, null, 0))
            .ratings(Requests.ratings(4, 100, 2, 160))
            .build();
    assertEquals("exactly-one-of", Requests.onlyFault(both).code());
    assertEquals(
        "Give exactly one of amplifier.rails, amplifier.ratings.",
        Requests.onlyFault(both).detail());
    RailMatchRequest neither = new Match().loadOhm(4.0).build();
    assertEquals("exactly-one-of", Requests.onlyFault(neither).code());
  }

  @Test
  void everyFieldOutOfBoundsIsNamedAtOnce() {
    Ratings ratings =
        new Ratings(
            null,
            null,
            List.of(new Ratings.Point(0.0, 1e6), new Ratings.Point(4.0, 1.0)),
            null,
            null);
    List<Fault> faults = Answers.faults(RAIL_MATCH, Requests.of(0.05, ratings));
    assertEquals(
        List.of(
            "/amplifier/ratings/basis",
            "/amplifier/ratings/points/0/load_ohm",
            "/amplifier/ratings/points/0/power_w",
            "/amplifier/ratings/supply_v",
            "/load_ohm"),
        faults.stream().map(Fault::pointer).sorted().toList());
  }

  @Test
  void whatADriverLacksIsNamedTogetherWithWhatTheAmplifierLacks() {
    RailMatchRequest request =
        new Match().loadOhm(4).driver(DriverBuilder.builder().fsHz(30.0).build()).build();
    List<Fault> faults = Answers.faults(RAIL_MATCH, request);
    assertEquals(
        List.of("", "/driver/continuous_power_w", "/driver/rated_ohm"),
        faults.stream().map(Fault::pointer).sorted().toList());
    assertEquals(
        List.of("exactly-one-of", "required", "required"),
        faults.stream().map(Fault::code).sorted().toList());
  }

  private static RailMatchRequest onDriver(double continuousW, double ratedOhm, double loadOhm) {
    return Requests.into(loadOhm)
        .ratings(Requests.ratings(4, 100, 2, 160))
        .driver(Requests.driver(continuousW, ratedOhm))
        .build();
  }

  @Test
  void lessThanHalfTheDriversPowerIsTooWeak() {
    assertEquals(List.of(), Requests.codes(onDriver(199, 4, 4)));
    Answer<RailMatchResult> answer = Requests.answer(onDriver(210, 4, 4));
    assertEquals(List.of("amplifier-too-weak"), Answers.codes(answer));
    assertEquals(-3.2222, answer.result().headroomDb(), 5e-5); // 10·lg(100/210)
  }

  @Test
  void moreThanTwiceTheDriversPowerCanDestroyItAndTheLimiterIsSaid() {
    assertEquals(List.of(), Requests.codes(onDriver(51, 4, 4)));
    Answer<RailMatchResult> answer = Requests.answer(onDriver(25, 4, 4));
    assertEquals(Verdict.WARNING, answer.verdict());
    assertEquals(10, answer.result().limiterRmsV(), 1e-9); // √(25·4)
    assertEquals(
        "The amplifier can give 100 W at 14.4 V, 6.021 dB more than the 25 W the driver"
            + " takes for long. Set the limiter to 10 V RMS or turn the gain down to that.",
        answer.findings().get(0).inFull());
  }

  @Test
  void whatARunningEngineAddsIsCountedAgainstTheDriver() {
    Rails rails = new Rails(20.0, 12.0, null, 0.0, null, null); // 50 W at 12 V, 72 W at 14.4 V
    RailMatchRequest request =
        new Match()
            .loadOhm(4.0)
            .rails(rails)
            .minimumOhm(2.0)
            .driver(Requests.driver(30.0, 4.0))
            .build();
    Answer<RailMatchResult> answer = Requests.answer(request);
    assertEquals(2.2185, answer.result().headroomDb(), 5e-5);
    assertEquals(List.of("amplifier-can-destroy-driver"), Answers.codes(answer));
    assertEquals(3.8021, answer.findings().get(0).value(), 5e-5);
  }

  private static Match withMinimum(double loadOhm, double minimumOhm) {
    return Requests.into(loadOhm).ratings(Requests.ratings(4, 100, 1, 200)).minimumOhm(minimumOhm);
  }

  @Test
  void aLoadBelowTheMinimumStops() {
    Answer<RailMatchResult> answer = Requests.answer(withMinimum(2, 4).build());
    assertEquals(Verdict.STOP, answer.verdict());
    assertEquals(List.of("load-below-minimum"), Answers.codes(answer));
    assertEquals("/load_ohm", answer.findings().get(0).pointer());
    assertEquals(List.of(), Requests.codes(withMinimum(4, 4).build()));
  }

  @Test
  void bridgedEachHalfMustBearHalfTheLoad() {
    assertEquals(
        List.of("load-below-minimum"), Requests.codes(withMinimum(3, 2).bridged(true).build()));
    assertEquals(List.of(), Requests.codes(withMinimum(4, 2).bridged(true).build()));
    assertEquals(
        List.of("bridged-minimum-doubtful"),
        Requests.codes(withMinimum(3, 2).bridged(true).minimumBridgedOhm(2.0).build()));
  }

  @Test
  void ratedIsComparedWithRated() {
    Driver fourOhm = Requests.driver(120.0, 4.0);
    Answer<RailMatchResult> dips = Requests.answer(withMinimum(3.2, 4).driver(fourOhm).build());
    assertEquals(List.of("load-dips-below-minimum"), Answers.codes(dips));
    assertEquals(Verdict.NOTE, dips.verdict());
    // A load of 2 ohm is no 4 ohm driver, whatever is said of it.
    assertTrue(
        Requests.codes(withMinimum(2, 4).driver(fourOhm).build()).contains("load-below-minimum"));
    Answer<RailMatchResult> low =
        Requests.answer(withMinimum(2, 4).driver(Requests.driver(120.0, 2.0)).build());
    assertEquals("/driver/rated_ohm", low.findings().get(0).pointer());
  }

  @Test
  void workingsEndInTheResult() {
    var answer = Answers.withWorkings(RAIL_MATCH, Requests.of(3, Requests.ratings(4, 144, 2, 200)));
    Map<String, Double> values = new HashMap<>();
    answer.workings().forEach(step -> values.put(step.quantity(), step.value()));
    assertEquals(30, values.get("open_circuit_v"), 1e-9);
    assertEquals(1, values.get("sag_ohm"), 1e-9);
    assertEquals(22.5, values.get("loaded_v"), 1e-9);
    assertEquals(22.5, answer.result().voltageV(), 1e-9);
  }
}
