package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.Setup.at;
import static org.footwell.acoustic.alignment.Setup.lr4;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.footwell.Answers;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Distance;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Verdict;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.Processor;
import org.footwell.parts.SeatBuilder;
import org.junit.jupiter.api.Test;

class SeatDelaysTest {

  @Test
  void theHandExampleOfTheMethodPage() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.7}});
    setup.asked.processor(new Processor(48000.0, null, null));
    SeatDelaysResult result = setup.result();
    SeatDelaysResult.ChannelDelay near = result.channels().get(0);
    assertEquals(2.9138, near.arrivalMs(), 5e-5);
    assertEquals(2.0396, near.delayMs(), 5e-5);
    assertEquals(700, near.pathMm(), 1e-9);
    assertEquals(98, near.delaySamples());
    assertEquals(2.041667, near.settingMs(), 5e-7);
    assertEquals(2.04, near.roundingErrorUs(), 0.005);
    assertEquals(-4.609, near.trimDb(), 5e-4);
    SeatDelaysResult.ChannelDelay far = result.channels().get(1);
    assertEquals(4.9534, far.arrivalMs(), 5e-5);
    assertEquals(0, far.delayMs());
    assertEquals(0, far.trimDb());
    SeatDelaysResult.Seat seat = result.seats().get(0);
    assertEquals(2.0396, seat.unalignedSpreadMs(), 5e-5);
    assertEquals(0.00204, seat.spreadMs(), 5e-6);
    // 0.7 m at 318.93 and 365.87 m/s is 2.1948 and 1.9132 ms, against the setting of 2.0417 ms.
    assertEquals(0.1532, seat.coldSpreadMs(), 1e-4);
    assertEquals(0.1284, seat.hotSpreadMs(), 1e-4);
    assertEquals(0.2816, result.driftMs(), 1e-4);
  }

  @Test
  void theExampleOfTheCardAlignsTheDriver() throws JsonProcessingException {
    Map<?, ?> json =
        new ObjectMapper().readValue(Setup.CALCULATION.card().example(), LinkedHashMap.class);
    SeatDelaysRequest request = new Engine().bind(SeatDelaysRequest.class, json, false);
    Answer<SeatDelaysResult> answer = Answers.of(Setup.CALCULATION, request);
    SeatDelaysResult result = answer.result();
    assertEquals(
        List.of(99.0, 38.0, 0.0),
        result.channels().stream().map(SeatDelaysResult.ChannelDelay::delaySamples).toList());
    assertEquals(0.0055, result.seats().get(0).spreadMs(), 5e-5);
    assertEquals(2.5373, result.seats().get(1).spreadMs(), 5e-5);
    SeatDelaysResult.Crossover passengerLeft = result.crossovers().get(1);
    assertEquals("passenger", passengerLeft.seat());
    assertEquals(32.976, passengerLeft.phaseErrorDeg(), 5e-4);
    assertEquals(-0.3647, passengerLeft.sumLossDb(), 5e-5);
    assertEquals(List.of("seats-disagree", "trim-distance-law"), Answers.codes(answer));
  }

  @Test
  void warmAirShortensTheDelay() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {2.0}});
    setup.asked.temperatureC(40.0);
    assertEquals(354.71, setup.result().speedOfSoundMPerS(), 0.005);
    assertEquals(1000 / 354.71, setup.delays()[0], 5e-5);
  }

  @Test
  void positionsGiveTheSameAsTheTape() {
    Setup setup = new Setup();
    setup.channel("near", at(1, 1, 1)).channel("far", at(2, 3, 5)).seat("driver", at(0, 3, 3));
    SeatDelaysResult result = setup.result();
    assertEquals(3, result.channels().get(0).distanceM(), 1e-12);
    assertEquals(Math.sqrt(8), result.channels().get(1).distanceM(), 1e-12);
  }

  @Test
  void withoutAProcessorNothingIsRounded() {
    SeatDelaysResult.ChannelDelay near =
        Setup.tape(new double[][] {{1.0}, {1.7}}).result().channels().get(0);
    assertNull(near.delaySamples());
    assertNull(near.settingMs());
    assertNull(near.roundingErrorUs());
    assertEquals(near.delayMs(), near.absoluteSettingMs());
  }

  @Test
  void delaysAreRoundedToTheStepOfTheProcessor() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.7}});
    setup.asked.processor(new Processor(48000.0, 4.0, null));
    // 97.90 samples: 96 or 100.
    assertEquals(96, setup.result().channels().get(0).delaySamples());
    setup.asked.processor(new Processor(48000.0, 0.48, null));
    // Steps of 0.01 ms: 2.04 ms.
    assertEquals(2.04, setup.result().channels().get(0).settingMs(), 1e-12);
  }

  @Test
  void aDelayInTheChainCountsAndIsInTheAbsoluteSetting() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.7}}).chain(0, 5);
    List<SeatDelaysResult.ChannelDelay> channels = setup.result().channels();
    assertEquals(0, channels.get(0).delayMs());
    assertEquals(5, channels.get(0).absoluteSettingMs());
    assertEquals(5 - 700 / 343.2, channels.get(1).delayMs(), 1e-9);
  }

  @Test
  void anExactDelayBeyondTheProcessorIsAStop() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.7}}).chain(1, 9);
    setup.asked.processor(new Processor(48000.0, null, 10.0));
    Finding worst = setup.answer().findings().get(0);
    assertEquals("delay-exceeds-maximum", worst.code());
    assertEquals("/channels/0", worst.pointer());
    assertEquals(11.04, worst.value(), 0.005);
    assertEquals(Verdict.STOP, setup.answer().verdict());
    setup.chain(0, 4).chain(1, 11);
    assertTrue(setup.codes().contains("absolute-setting-exceeds-maximum"));
    assertFalse(setup.codes().contains("delay-exceeds-maximum"));
  }

  @Test
  void aLowerChannelThatIsLateLags() {
    // Two seats of which the heavier is aligned: at the other, 0.5 m at 80 Hz is 41.96 degrees.
    Setup setup = Setup.tape(new double[][] {{1.0, 1.5}, {1.0, 1.0}}).weight(0, 10);
    setup.crossover("c0", "c1", 80);
    List<SeatDelaysResult.Crossover> sums = setup.result().crossovers();
    assertEquals("s0", sums.get(0).seat());
    assertEquals(0, sums.get(0).phaseErrorDeg(), 1e-6);
    assertEquals("s1", sums.get(1).seat());
    assertEquals(-360 * 80 * 0.5 / 343.2, sums.get(1).phaseErrorDeg(), 1e-6);
  }

  @Test
  void twoEqualSeatsShareTheSpread() {
    Setup setup = Setup.tape(new double[][] {{1.0, 1.6}, {1.6, 1.0}});
    assertArrayEquals(new double[] {0, 0}, setup.delays(), 1e-9);
    setup.result().seats().forEach(s -> assertEquals(600 / 343.2, s.spreadMs(), 1e-9));
    assertEquals(2, setup.codes().stream().filter("seats-disagree"::equals).count());
  }

  @Test
  void theHeavierOfTwoSeatsIsAlignedAlone() {
    Setup setup = Setup.tape(new double[][] {{1.0, 1.6}, {1.6, 1.0}}).weight(0, 2);
    assertArrayEquals(new double[] {600 / 343.2, 0}, setup.delays(), 1e-9);
    assertEquals(0, setup.result().seats().get(0).spreadMs(), 1e-9);
    assertEquals(1200 / 343.2, setup.result().seats().get(1).spreadMs(), 1e-9);
  }

  @Test
  void bothEarsCountHalfTheWeightOfTheirSeatEach() {
    Setup ears = new Setup();
    ears.channel("left", at(1, 0.8, 0)).channel("right", at(1, -0.8, 0));
    ears.seats.add(
        SeatBuilder.builder()
            .name("driver")
            .weight(3.0)
            .leftEar(at(0, 0.5, 0))
            .rightEar(at(0, 0.3, 0)));
    ears.seat("passenger", at(0, -0.4, 0)).weight(1, 2.0);
    Setup points = new Setup();
    points.channel("left", at(1, 0.8, 0)).channel("right", at(1, -0.8, 0));
    points.seat("a", at(0, 0.5, 0)).seat("b", at(0, 0.3, 0)).seat("c", at(0, -0.4, 0));
    points.weight(0, 1.5).weight(1, 1.5).weight(2, 2);
    assertArrayEquals(points.delays(), ears.delays(), 1e-12);
    assertEquals(
        Math.max(
            points.result().seats().get(0).spreadMs(), points.result().seats().get(1).spreadMs()),
        ears.result().seats().get(0).spreadMs(),
        1e-12);
  }

  @Test
  void temperatureIsRemarkedOnWhereTheDriftIsLarge() {
    assertTrue(Setup.tape(new double[][] {{1.0}, {2.3}}).codes().contains("temperature-drift"));
    assertFalse(Setup.tape(new double[][] {{1.0}, {2.2}}).codes().contains("temperature-drift"));
  }

  @Test
  void everythingAmissIsRefusedAtOnce() {
    Setup setup = new Setup();
    setup.channel("front", at(1, 1, 1)).channel("front", at(1, 1, 1)).seat(null, at(0, 0, 0));
    setup.filters(0, lr4(100), lr4(80), null);
    setup.seat("passenger", at(0, 0, 0)).weight(1, 0);
    setup.seats.get(1).leftEar(at(0, 0, 0));
    setup.crossover("rear", "front", 80).crossover("rear", "front", 90);
    setup.microphones.add(new SeatDelaysRequest.SeatMicrophone("a", "nobody", null));
    assertEquals(
        List.of(
            "not-ascending at /channels/0/low_pass/frequency_hz",
            "not-allowed at /seats/1/weight",
            "at-most-one-of at /seats/1/left_ear",
            "needed-beside at /seats/1/right_ear",
            "required at /seats/0/name",
            "needed-beside at /arrivals",
            "duplicate at /channels/1/name",
            "duplicate at /crossovers/1/lower",
            "dangling-reference at /microphones/0/seat",
            "dangling-reference at /crossovers/0/lower",
            "dangling-reference at /crossovers/1/lower"),
        setup.faults());
    for (Fault fault : Answers.faults(Setup.CALCULATION, setup.request())) {
      assertFalse(fault.detail().contains("{"), fault::detail);
    }
  }

  @Test
  void filtersPolaritiesPlacesAndCrossoversMustBePossible() {
    Setup setup = new Setup();
    setup.channel("front", at(1, 1, 1)).channel("rear", null).seat("driver", null);
    setup.filters(0, null, new Filter(Kind.LINKWITZ_RILEY, 3, 80.0, null), 0);
    setup.crossover("front", "front", 80);
    assertEquals(
        List.of(
            "not-allowed at /channels/0/polarity",
            "linkwitz-riley-odd at /channels/0/low_pass/order",
            "position-missing at /channels/1/position",
            "position-missing at /seats/0/position",
            "crossover-with-itself at /crossovers/0"),
        setup.faults());
    for (Fault fault : Answers.faults(Setup.CALCULATION, setup.request())) {
      assertFalse(fault.detail().contains("{"), fault::detail);
    }
  }

  @Test
  void measuredDistancesMustBeCompleteAndStandAlone() {
    Setup setup = Setup.tape(new double[][] {{1.0, 1.1}, {1.2, 1.3}});
    setup.channel("late", at(0, 0, 0)).seat("third", at(0, 0, 0));
    setup.distances.add(new Distance("c0", "s0", 1.0));
    setup.distances.add(new Distance("nobody", "s1", 1.0));
    assertEquals(
        List.of(
            "at-most-one-of at /channels/2/position",
            "at-most-one-of at /seats/2/position",
            "duplicate at /distances/4/channel",
            "dangling-reference at /distances/5/channel",
            "distance-missing at /distances",
            "distance-missing at /distances",
            "distance-missing at /distances",
            "distance-missing at /distances",
            "distance-missing at /distances"),
        setup.faults());
    setup.distances.subList(4, 6).clear();
    setup.channels.get(2).position(null);
    setup.seats.get(2).position(null);
    assertEquals(
        List.of(
            "distance-missing at /distances",
            "distance-missing at /distances",
            "distance-missing at /distances",
            "distance-missing at /distances",
            "distance-missing at /distances"),
        setup.faults());
  }

  @Test
  void crossoversMustNotGoInACircle() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.0}, {1.0}});
    setup.crossover("c0", "c1", 80).crossover("c1", "c0", 90).crossover("c1", "c2", 3000);
    assertEquals(
        List.of(
            "crossover-circle at /crossovers/0",
            "crossover-circle at /crossovers/1",
            "crossover-circle at /crossovers/2"),
        setup.faults());
  }

  @Test
  void fullRangeMeansNoFilters() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.0}});
    setup.channels.get(0).highPass(lr4(80));
    assertEquals(List.of("not-allowed at /channels/0/full_range"), setup.faults());
  }

  @Test
  void aLoudspeakerCannotSitInAnEar() {
    Setup setup = new Setup();
    setup.channel("headrest", at(0, 0, 1)).seat("driver", at(0, 0.04, 1));
    assertEquals(List.of("too-close at /channels/0/position"), setup.faults());
  }

  @Test
  void boundsAreKept() {
    Setup setup = new Setup();
    setup.channel("front", at(21, 0, 0)).seat("driver", at(0, 0, 0)).weight(0, 0);
    setup.asked.temperatureC(86.0);
    assertEquals(
        List.of(
            "not-allowed at /channels/0/position/x_m",
            "not-allowed at /seats/0/weight",
            "not-allowed at /temperature_c"),
        setup.faults());
  }

  @Test
  void workingsGiveEveryStepWithItsSource() {
    Setup setup = Setup.tape(new double[][] {{1.0}, {1.7}});
    setup.filters(0, null, lr4(80), null).crossover("c0", "c1", 80);
    Answer<SeatDelaysResult> answer = Answers.withWorkings(Setup.CALCULATION, setup.request());
    List<String> quantities = answer.workings().stream().map(step -> step.quantity()).toList();
    assertTrue(
        quantities.containsAll(
            List.of(
                "speed_of_sound_m_per_s", "travel_ms", "delay_ms", "moved_ms", "largest_loss_db")),
        quantities::toString);
    assertTrue(answer.workings().stream().noneMatch(step -> step.source().isBlank()));
  }
}
