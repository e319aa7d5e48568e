package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.Setup.at;
import static org.footwell.acoustic.alignment.Setup.lr4;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.acoustic.alignment.MeasuredArrival.Method;
import org.footwell.acoustic.alignment.SeatDelaysRequest.SeatMicrophone;
import org.footwell.parts.Processor;
import org.junit.jupiter.api.Test;

/** Delays from arrivals that were measured instead of distances. */
class MeasuredArrivalsTest {

  /** Channels c0, c1 … with one arrival in ms for each of the microphones named. */
  private static Setup heard(List<String> microphones, double[]... ms) {
    Setup setup = new Setup();
    for (int c = 0; c < ms.length; c++) {
      setup.channel("c" + c, null);
      for (int m = 0; m < ms[c].length; m++) {
        setup.arrival("c" + c, microphones.get(m), ms[c][m]);
      }
    }
    return setup;
  }

  @Test
  void arrivalsOfPathsAlignLikeThePathsAndTheCommonLatencyCancels() {
    Setup tape = Setup.tape(new double[][] {{1.0, 1.6}, {1.7, 1.1}});
    double c = tape.result().speedOfSoundMPerS();
    double latency = 21.5;
    Setup setup =
        heard(
            List.of("s0", "s1"),
            new double[] {1000 / c + latency, 1600 / c + latency},
            new double[] {1700 / c + latency, 1100 / c + latency});
    setup.seat("s0", null).seat("s1", null);
    Processor processor = new Processor(48_000.0, null, null);
    tape.asked.processor(processor);
    setup.asked.processor(processor);
    assertArrayEquals(tape.delays(), setup.delays(), 1e-6);
    SeatDelaysResult expected = tape.result();
    SeatDelaysResult result = setup.result();
    assertEquals(expected.seats(), rounded(result.seats(), expected.seats()));
    assertEquals(expected.driftMs(), result.driftMs(), 1e-9);
    assertEquals(1.3 + latency * c / 1000, result.channels().get(0).distanceM(), 1e-9);
    assertEquals(0, result.channels().get(0).trimDb(), 0);
    assertTrue(setup.codes().contains("no-trims-from-arrivals"));
    assertTrue(!setup.codes().contains("trim-distance-law"));
  }

  private static List<SeatDelaysResult.Seat> rounded(
      List<SeatDelaysResult.Seat> seats, List<SeatDelaysResult.Seat> expected) {
    for (int s = 0; s < seats.size(); s++) {
      assertEquals(expected.get(s).spreadMs(), seats.get(s).spreadMs(), 1e-6);
      assertEquals(expected.get(s).coldSpreadMs(), seats.get(s).coldSpreadMs(), 1e-6);
      assertEquals(expected.get(s).unalignedSpreadMs(), seats.get(s).unalignedSpreadMs(), 1e-6);
    }
    return expected;
  }

  @Test
  void theMicrophonesOfASeatAreAveragedByTheirWeights() {
    List<String> ears = List.of("left ear", "right ear");
    Setup setup = heard(ears, new double[] {3.0, 3.4}, new double[] {6.0, 5.6});
    setup.seat("driver", null);
    // All belong to the only seat, alike: 5.8 − 3.2.
    assertArrayEquals(new double[] {2.6, 0}, setup.delays(), 1e-12);
    setup.microphones.add(new SeatMicrophone("left ear", "driver", 1.0));
    setup.microphones.add(new SeatMicrophone("right ear", "driver", 3.0));
    // As the method page of arrival-times: 5.7 − 3.3.
    assertArrayEquals(new double[] {2.4, 0}, setup.delays(), 1e-12);
    assertEquals(3.3, setup.result().channels().get(0).arrivalMs(), 1e-12);
  }

  @Test
  void theChainIsInAnArrivalAlreadyAndInTheAbsoluteSetting() {
    Setup setup = heard(List.of("m"), new double[] {5.0}, new double[] {7.0});
    setup.seat("driver", null).chain(0, 1.5);
    SeatDelaysResult.ChannelDelay near = setup.result().channels().get(0);
    assertEquals(5, near.arrivalMs(), 1e-12);
    assertEquals(2, near.delayMs(), 1e-12);
    assertEquals(3.5, near.absoluteSettingMs(), 1e-12);
  }

  @Test
  void filtersCountAsWithDistancesUnlessTheArrivalIsThatOfAnEnvelope() {
    Setup setup = heard(List.of("m"), new double[] {5.0}, new double[] {7.0});
    setup.seat("driver", null);
    setup.filters(0, null, lr4(80), null).filters(1, lr4(80), null, null);
    setup.crossover("c0", "c1", 80);
    assertArrayEquals(new double[] {2, 0}, setup.delays(), 1e-9);
    assertEquals(0, setup.result().crossovers().get(0).phaseErrorDeg(), 1e-6);
    assertEquals(List.of("no-trims-from-arrivals"), setup.codes());
    setup.arrivals.get(0).method(Method.ENVELOPE);
    assertTrue(setup.codes().contains("arrival-holds-filters"));
  }

  @Test
  void aSurePolarityThatIsNotTheStatedOneIsTold() {
    Setup setup = heard(List.of("m"), new double[] {5.0}, new double[] {7.0});
    setup.seat("driver", null);
    setup.arrivals.get(0).polarity(-1).polarityConfidence(0.9);
    assertTrue(setup.codes().contains("measured-polarity-differs"));
    setup.arrivals.get(0).polarity(-1).polarityConfidence(0.3);
    assertTrue(!setup.codes().contains("measured-polarity-differs"));
    setup.arrivals.get(0).polarity(-1).polarityConfidence(0.9);
    setup.filters(0, null, null, -1);
    assertTrue(!setup.codes().contains("measured-polarity-differs"));
  }

  @Test
  void whatDoesNotFitTogetherIsRefused() {
    Setup setup = heard(List.of("s0", "elsewhere"), new double[] {5, 6}, new double[] {7});
    setup.seat("s0", null).seat("s1", at(0, 0, 0));
    setup.arrival("c1", "s0", 7.0).arrival("c9", "s0", 1.0);
    setup.distances.add(new SeatDelaysRequest.Distance("c0", "s0", 1.0));
    assertEquals(
        List.of(
            "at-most-one-of at /arrivals",
            "at-most-one-of at /seats/1/position",
            "at-most-one-of at /seats/1/position",
            "duplicate at /arrivals/3/channel",
            "dangling-reference at /arrivals/4/channel",
            "dangling-reference at /arrivals/1/microphone",
            "arrival-missing at /arrivals"),
        setup.faults());
    setup.distances.clear();
    setup.seats.get(1).position(null);
    setup.arrivals.subList(3, 5).clear();
    assertEquals(
        List.of("dangling-reference at /arrivals/1/microphone", "arrival-missing at /arrivals"),
        setup.faults());
    Setup grouped = heard(List.of("a", "b"), new double[] {5, 6}, new double[] {7});
    grouped.seat("driver", null).seat("passenger", null);
    grouped.microphones.add(new SeatMicrophone("a", "driver", null));
    grouped.microphones.add(new SeatMicrophone("a", "drivr", null));
    assertEquals(
        List.of(
            "duplicate at /microphones/1/id",
            "dangling-reference at /microphones/1/seat",
            "dangling-reference at /arrivals/1/microphone",
            "arrival-missing at /arrivals"),
        grouped.faults());
    grouped.microphones.remove(1);
    assertEquals(
        List.of("dangling-reference at /arrivals/1/microphone", "arrival-missing at /arrivals"),
        grouped.faults());
    Setup alone = Setup.tape(new double[][] {{1.0}});
    alone.microphones.add(new SeatMicrophone("a", "s0", null));
    assertEquals(List.of("needed-beside at /arrivals"), alone.faults());
  }
}
